namespace WarmupConsole.Storage.Yaml;

/// <summary>What the value of a field may be.</summary>
public abstract record FieldShape
{
    /// <summary>Any text; its meaning, such as music, is read from it afterwards.</summary>
    public sealed record Text : FieldShape;

    /// <summary>Lower-case words joined by hyphens.</summary>
    public sealed record Id : FieldShape;

    public sealed record Whole(Limits Limits) : FieldShape;

    /// <summary>With at most three decimals.</summary>
    public sealed record Number(Limits Limits) : FieldShape;

    public sealed record YesNo : FieldShape;

    public sealed record Date : FieldShape;

    /// <summary>One of some words.</summary>
    public abstract record Choice : FieldShape
    {
        public abstract IReadOnlyList<string> Names { get; }
    }

    public sealed record Choice<T>(Choices<T> Choices) : Choice
        where T : struct
    {
        public override IReadOnlyList<string> Names => Choices.Names;
    }

    public sealed record List(Limits HowMany, FieldShape Item) : FieldShape;

    public sealed record Map(FieldTable Table) : FieldShape;

    /// <summary>One of two shapes that cannot be taken for each other.</summary>
    public sealed record Either(FieldShape First, FieldShape Second) : FieldShape;

    /// <summary>This shape, or the one within it, that is of a kind.</summary>
    /// <exception cref="InvalidOperationException">There is none: the reader asks for what the table does not offer.</exception>
    internal T As<T>()
        where T : FieldShape => Find<T>() ?? throw new InvalidOperationException($"{this} is no {typeof(T).Name}.");

    private T? Find<T>()
        where T : FieldShape => this switch
        {
            T found => found,
            Either either => either.First.Find<T>() ?? either.Second.Find<T>(),
            List list => list.Item.Find<T>(),
            _ => null,
        };
}
