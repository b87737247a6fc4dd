namespace WarmupConsole.Storage.Yaml;

/// <summary>One row of a <see cref="FieldTable"/>.</summary>
/// <param name="Name">As it stands in the file.</param>
/// <param name="Shape">What its value may be.</param>
/// <param name="About">What it means, for an editor to show.</param>
public sealed record Field(string Name, FieldShape Shape, string About)
{
    /// <summary>True when it must be there.</summary>
    public bool IsRequired { get; init; }

    /// <summary>The same field, which must be there.</summary>
    public Field Must => this with { IsRequired = true };

    public static Field Format => new Field("format", new FieldShape.Whole(new(FormatCheck.Newest, FormatCheck.Newest, "")), "The form of this file.").Must;

    public static Field Text(string name, string about) => new(name, new FieldShape.Text(), about);

    public static Field Id(string name, string about) => new(name, new FieldShape.Id(), about);

    public static Field Whole(string name, Limits limits, string about) => new(name, new FieldShape.Whole(limits), about);

    public static Field Number(string name, Limits limits, string about) => new(name, new FieldShape.Number(limits), about);

    public static Field YesNo(string name, string about) => new(name, new FieldShape.YesNo(), about);

    public static Field Date(string name, string about) => new(name, new FieldShape.Date(), about);

    public static Field Choice<T>(string name, Choices<T> choices, string about)
        where T : struct => new(name, new FieldShape.Choice<T>(choices), about);

    public static Field List(string name, Limits howMany, FieldShape item, string about) => new(name, new FieldShape.List(howMany, item), about);

    public static Field List(string name, Limits howMany, FieldTable item, string about) => List(name, howMany, new FieldShape.Map(item), about);

    public static Field Map(string name, FieldTable table, string about) => new(name, new FieldShape.Map(table), about);

    /// <summary>One value, or a list of such.</summary>
    public static Field OneOrMany(string name, Limits howMany, FieldShape item, string about) =>
        new(name, new FieldShape.Either(item, new FieldShape.List(howMany, item)), about);
}
