using System.Globalization;
using System.IO.Hashing;
using System.Runtime.CompilerServices;
using System.Text;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Storage.SessionLogs;

public sealed class SessionLogReaderTests
{
    private static readonly byte[] Whole = LogSamples.Log(LogSamples.EachKind);
    private static readonly IReadOnlyList<int> Ends = LogSamples.LineEnds(Whole);

    [Fact]
    public void Every_kind_of_event_has_a_sample_here()
    {
        IEnumerable<string> kinds = typeof(SessionEvent).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(SessionEvent))).Select(type => type.Name);
        Assert.Equal(kinds.Order(), LogSamples.EachKind.Select(fact => fact.GetType().Name).Distinct().Order());
    }

    [Fact]
    public void Every_event_reads_back_as_itself()
    {
        SessionLog log = SessionLogReader.Read(Whole);
        Assert.Empty(log.Damages);
        Assert.Equal(LogSamples.EachKind.Count, log.Records.Count);
        Assert.All(log.Records, record => Assert.Equivalent(LogSamples.EachKind[(int)record.Sequence - 1], record.Event, strict: true));
        Assert.All(log.Records, record => Assert.Equal((LogSamples.Evening, 1, 123_456_789), (record.At, record.Epoch, record.Monotonic.Nanoseconds)));
        Assert.Equal(Whole, LogSamples.Log([.. log.Records.Select(record => record.Event)]));
    }

    [Fact]
    public void A_line_is_as_the_specification_shows_it()
    {
        string line = Encoding.UTF8.GetString(LogSamples.Log(new MarkUndone(7)));
        Assert.StartsWith("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":123456789,\"id\":7,\"crc\":\"", line, StringComparison.Ordinal);
        string body = line[..line.IndexOf(",\"crc\"", StringComparison.Ordinal)];
        Assert.EndsWith(Crc32.HashToUInt32(Encoding.UTF8.GetBytes(body)).ToString("x8", CultureInfo.InvariantCulture) + "\"}\n", line, StringComparison.Ordinal);
    }

    /// <summary>The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms.</summary>
    [Fact]
    public void The_checksum_gives_the_published_check_value() => Assert.Equal(0xCBF43926, Crc32.HashToUInt32("123456789"u8));

    [Fact]
    public void Cut_at_any_byte_the_whole_records_before_read_back()
    {
        for (int cut = 0; cut <= Whole.Length; cut++)
        {
            SessionLog log = SessionLogReader.Read(Whole.AsSpan(0, cut));
            int whole = Ends.Count(end => end - 1 <= cut);
            bool clean = cut == 0 || Ends.Contains(cut) || Ends.Contains(cut + 1);
            Assert.Equal(whole, log.Records.Count);
            Assert.Equal(clean ? [] : [DamageKind.TornTail], log.Damages.Select(damage => damage.Kind));
            Assert.All(log.Damages, damage => Assert.Equal(cut, damage.Offset + damage.Length));
        }
    }

    [Fact]
    public void With_any_bit_flipped_all_other_records_read_back_and_the_damage_is_told()
    {
        for (int at = 0; at < Whole.Length; at++)
        {
            byte[] spoilt = [.. Whole];
            spoilt[at] ^= (byte)(1 << (at % 8));
            SessionLog log = SessionLogReader.Read(spoilt);
            int line = Ends.Count(end => end <= at);
            bool isLineEnd = Whole[at] == '\n';
            long[] lost = isLineEnd && line + 1 < Ends.Count ? [line + 1, line + 2] : [line + 1];
            Assert.True(log.Damages.Count > 0, $"nothing was told of byte {at}");
            Assert.Equal(Enumerable.Range(1, Ends.Count).Select(n => (long)n).Except(lost), log.Records.Select(record => record.Sequence));
            Assert.Contains(log.Damages, damage => damage.Offset <= at && at <= damage.Offset + damage.Length);
        }
    }

    [Fact]
    public void Bytes_that_are_no_log_at_all_are_told_and_not_thrown()
    {
        Random random = new(11);
        for (int file = 0; file < 300; file++)
        {
            byte[] junk = new byte[random.Next(1, 400)];
            random.NextBytes(junk);
            Assert.Empty(SessionLogReader.Read(junk).Records);
        }

        Assert.Empty(SessionLogReader.Read([]).Damages);
    }

    [Theory]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"sneezed\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1", DamageKind.UnknownType)]
    [InlineData("{\"format\":2,\"seq\":1,\"type\":\"mark-undone\"", DamageKind.NewerFormat)]
    [InlineData("{\"format\":0,\"seq\":1", DamageKind.NotARecord)]
    [InlineData("{\"seq\":1", DamageKind.NotARecord)]
    [InlineData("{\"format\":\"1\"", DamageKind.NotARecord)]
    [InlineData("[1", DamageKind.NotARecord)]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1", DamageKind.NotARecord)]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"id\":\"seven\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1", DamageKind.NotARecord)]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"id\":7,\"at\":\"yesterday\",\"epoch\":1,\"mono\":1", DamageKind.NotARecord)]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"hold-changed\",\"hold\":null,\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1", DamageKind.NotARecord)]
    public void A_line_with_a_right_checksum_is_judged_by_what_it_says(string body, DamageKind kind)
    {
        SessionLog log = SessionLogReader.Read(Checked(body));
        Assert.Empty(log.Records);
        LogDamage damage = Assert.Single(log.Damages);
        Assert.Equal((kind, LogTexts.Damage(kind)), (damage.Kind, damage.Sentence));
    }

    [Fact]
    public void A_field_that_is_not_known_is_passed_over()
    {
        SessionLog log = SessionLogReader.Read(Checked("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1,\"id\":7,\"mood\":\"bright\""));
        Assert.Equal(new MarkUndone(7), Assert.Single(log.Records).Event);
    }

    [Theory]
    [InlineData("\"id\":1.5")]
    [InlineData("\"id\":\"1\"")]
    [InlineData("\"id\":null")]
    [InlineData("\"id\":[1]")]
    [InlineData("\"other\":1")]
    [InlineData("\"id\":07")]
    [InlineData("\"id\":-")]
    [InlineData("\"id\":7.")]
    [InlineData("\"id\":7x")]
    [InlineData("\"id\":7,")]
    [InlineData("\"id\":7 \"more\":1")]
    [InlineData("\"id\":7,more:1")]
    [InlineData("\"id\":7,\"more\"1")]
    [InlineData("\"id\":7,\"more\":tru")]
    [InlineData("\"id\":7,\"more\":nulls")]
    [InlineData("\"id\":7,\"more\":\"a\u0001b\"")]
    [InlineData("\"id\":7,\"more\":\"a\\x\"")]
    [InlineData("\"id\":7,\"more\":[1,]")]
    [InlineData("\"id\":7,\"more\":[1 2]")]
    [InlineData("\"id\":7,\"more\":[\"a\"")]
    [InlineData("\"id\":7,\"more\":[1}")]
    [InlineData("\"id\":7,\"more\":]")]
    public void Fields_that_are_missing_or_of_another_type_or_no_JSON_make_no_record(string fields) =>
        Assert.Equal(DamageKind.NotARecord, Assert.Single(SessionLogReader.Read(Checked(Undone + fields)).Damages).Kind);

    [Fact]
    public void Of_a_field_that_stands_twice_the_last_counts_however_many_stand_between()
    {
        string others = string.Concat(Enumerable.Range(0, 40).Select(i => $"\"x{i}\":[{i},{{\"id\":3}}],"));
        SessionLog log = SessionLogReader.Read(Checked($"{Undone}\"id\":7,{others}\"id\":8"));
        Assert.Equal(new MarkUndone(8), Assert.Single(log.Records).Event);
    }

    /// <summary>A line that begins as the writer writes it is read by a shorter way than any other.</summary>
    [Fact]
    public void A_line_with_more_space_or_another_order_says_the_same()
    {
        string[] bodies = [.. Encoding.UTF8.GetString(Whole).TrimEnd('\n').Split('\n').Select(line => line[..line.LastIndexOf(",\"crc\"", StringComparison.Ordinal)])];
        string[] spaced = [.. bodies.Select(body => "{ " + body[1..])];
        string[] turned = [.. bodies.Select(body => "{" + body[(body.IndexOf("\"seq\"", StringComparison.Ordinal))..] + ",\"format\":1")];
        IReadOnlyList<SessionRecord> expected = SessionLogReader.Read(Whole).Records;
        Assert.Equal(27, expected.Count);
        Assert.All([spaced, turned], lines => Assert.Equivalent(expected, SessionLogReader.Read([.. lines.SelectMany(Checked)]).Records, strict: true));
    }

    [Theory]
    [InlineData("{\"format\":1,\"seq\":01,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1.5,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":9223372036854775808,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone,\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.1234+01:00\",\"epoch\":1,\"mono\":1,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16 19:30:05.123+01:00\",\"epoch\":1,\"mono\":1,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00,\"epoch\":1,\"mono\":1,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":2147483648,\"mono\":1,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":-2147483649,\"mono\":1,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1e,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1,,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1}{,\"id\":7")]
    [InlineData("{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1,\"id\":7]")]
    public void Nearly_as_the_writer_writes_it_is_not_enough(string body) =>
        Assert.Equal(DamageKind.NotARecord, Assert.Single(SessionLogReader.Read(Checked(body)).Damages).Kind);

    [Theory]
    [InlineData("\"id\": 7")]
    [InlineData("\"id\":7,\"more\":-0")]
    [InlineData("\"id\":7,\"more\":-12.5e3")]
    [InlineData("\"id\":7,\"more\":\"\\u0041\\\"\"")]
    [InlineData("\"id\":7,\"more\":[]")]
    [InlineData("\"id\":7,\"more\":[true,false,null,\"]\",-1]")]
    [InlineData("\"id\":7,\"more\":[[1],{\"id\":3}]")]
    [InlineData("\"more\":[1, 2],\"id\":7")]
    [InlineData("\"more\":{\"id\":3},\"id\":7")]
    [InlineData("\"x1\":1,\"id\":7")]
    public void A_field_that_is_written_otherwise_says_the_same(string fields) =>
        Assert.Equal(new MarkUndone(7), Assert.Single(SessionLogReader.Read(Checked(Undone + fields)).Records).Event);

    [Fact]
    public void A_field_of_the_envelope_that_comes_again_at_the_end_counts()
    {
        SessionLog log = SessionLogReader.Read(Checked(Undone + "\"id\":7,\"mono\":5,\"epoch\":3"));
        Assert.Equal((3, 5), (Assert.Single(log.Records).Epoch, log.Records[0].Monotonic.Nanoseconds));
    }

    [Fact]
    public void A_line_taken_out_is_told_as_a_gap_with_its_numbers()
    {
        LogDamage gap = Assert.Single(SessionLogReader.Read([.. Whole[..Ends[2]], .. Whole[Ends[4]..]]).Damages);
        Assert.Equal((DamageKind.SequenceGap, "records 4 to 5 are missing", Ends[2]), (gap.Kind, gap.Sentence, (int)gap.Offset));
    }

    [Fact]
    public void The_same_record_twice_is_passed_over_and_another_under_its_number_is_told()
    {
        Assert.Empty(SessionLogReader.Read([.. Whole, .. Whole[Ends[1]..Ends[2]]]).Damages);
        SessionLog log = SessionLogReader.Read([.. Whole, .. LogSamples.Log(new MarkUndone(99))]);
        Assert.Equal(DamageKind.SequenceRepeated, Assert.Single(log.Damages).Kind);
        Assert.Equal(Ends.Count, log.Records.Count);
    }

    [Fact]
    public void Windows_line_ends_change_nothing() =>
        Assert.Empty(SessionLogReader.Read(Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(Whole).Replace("\n", "\r\n", StringComparison.Ordinal))).Damages);

    /// <summary>
    /// Made from docs/session-log.md alone, by another program with another CRC-32, and never written again: a log of format 1 must
    /// be read by every later version.
    /// </summary>
    [Fact]
    public void A_log_kept_from_the_first_version_still_reads()
    {
        SessionLog log = SessionLogReader.Read(File.ReadAllBytes(Golden("session-log-format-1.jsonl")));
        Assert.Equal((14, 1), (log.Records.Count, log.Damages.Count));
        Assert.Equal(DamageKind.TornTail, log.Damages[0].Kind);
        Assert.Equal("The Lantern Quay Singers", log.Start!.Choir);
        Assert.Equal("altos ♭ in \"E\"", log.Records.Select(record => record.Event).OfType<MarkMade>().First().Raw);
    }

    private const string Undone = "{\"format\":1,\"seq\":1,\"type\":\"mark-undone\",\"at\":\"2027-02-16T19:30:05.123+01:00\",\"epoch\":1,\"mono\":1,";

    private static byte[] Checked(string body) =>
        Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{body},\"crc\":\"{Crc32.HashToUInt32(Encoding.UTF8.GetBytes(body)):x8}\"}}\n"));

    private static string Golden(string name, [CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "Golden", name);
}
