using System.Text;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Yaml;

/// <summary>Files spoilt at random, from a seed: they may be read or refused, but nothing may be thrown.</summary>
public sealed class MutatedFilesTests
{
    private const int FilesEach = 1_500;

    private static readonly string[] Pieces =
        ["&x ", "*x", "!t ", "? ", "- ", ": ", "{", "}", "[", "]", "|", ">", "\"", "'", "\t", "#", "%", "@", "`", "---\n", "...\n", "<<: *x", "\0", "\u202E", "\r", "~", "\u00e9", "999999999999999999999", "\\u0000"];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_spoilt_plan_is_read_or_refused(int seed) =>
        Spoil(Samples.Plan, seed, bytes => PlanFile.Read("f", bytes).Problems);

    [Theory]
    [InlineData(3)]
    public void A_spoilt_exercise_file_is_read_or_refused(int seed) =>
        Spoil(Samples.Exercises, seed, bytes => ExerciseFile.Read("f", bytes).Problems);

    [Theory]
    [InlineData(5)]
    public void A_spoilt_exercise_in_parts_is_read_or_refused(int seed) =>
        Spoil(Samples.InParts, seed, bytes => ExerciseFile.Read("f", bytes).Problems);

    [Theory]
    [InlineData(4)]
    public void A_spoilt_choir_is_read_or_refused(int seed) =>
        Spoil(Samples.Choir, seed, bytes => ChoirFile.Read("f", bytes).Problems);

    private static void Spoil(string sample, int seed, Func<byte[], IReadOnlyList<FileProblem>> read)
    {
        Random random = new(seed);
        int refused = 0;
        for (int file = 0; file < FilesEach; file++)
        {
            byte[] spoilt = Mutate(sample, random);
            try
            {
                IReadOnlyList<FileProblem> problems = read(spoilt);
                Assert.All(problems, problem => Assert.DoesNotContain(problem.ToString(), c => Printable.IsForbidden(c) && c != '\n'));
                refused += problems.Count > 0 ? 1 : 0;
            }
            catch (Exception fault) when (fault is not Xunit.Sdk.IAssertionException)
            {
                Assert.Fail($"seed {seed}, file {file}: {fault}\n{Encoding.UTF8.GetString(spoilt)}");
            }
        }

        Assert.InRange(refused, FilesEach / 2, FilesEach);
    }

    private static byte[] Mutate(string sample, Random random)
    {
        List<byte> bytes = [.. Encoding.UTF8.GetBytes(sample)];
        for (int change = random.Next(1, 4); change > 0; change--)
        {
            int at = random.Next(bytes.Count);
            switch (random.Next(5))
            {
                case 0:
                    bytes[at] ^= (byte)(1 << random.Next(8));
                    break;
                case 1:
                    bytes.RemoveRange(at, Math.Min(random.Next(1, 20), bytes.Count - at));
                    break;
                case 2:
                    bytes.InsertRange(at, Encoding.UTF8.GetBytes(Pieces[random.Next(Pieces.Length)]));
                    break;
                case 3:
                    int length = Math.Min(random.Next(1, 80), bytes.Count - at);
                    bytes.InsertRange(random.Next(bytes.Count), bytes.GetRange(at, length));
                    break;
                default:
                    bytes.RemoveRange(at, bytes.Count - at);
                    bytes.Add((byte)'\n');
                    break;
            }
        }

        return [.. bytes];
    }
}
