
namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>
/// Proposes a plan: of everything the choir may sing, the steps that together are worth most by <see cref="PlanPoints"/> and fit the minutes. The
/// check finds neither errors nor warnings in it unless nothing else is to be had, which is said. The same input gives the same plan, always.
/// </summary>
public static class NextPlan
{
    /// <summary>A step that the check still speaks against in its company is taken off the table so many times.</summary>
    private const int MostTries = 8;

    /// <summary>Makes the proposal.</summary>
    public static NextPlanResult From(NextPlanInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        OfferBook book = new(input);
        OfferTable table = new(input, book, book.All());
        Chosen chosen = Choose(table);
        for (int variant = 1; variant < input.Variant; variant++)
        {
            table = table.Without(chosen);
            chosen = Choose(table);
        }

        return new PlanWriting(input, book, table).Write(chosen);
    }

    private static Chosen Choose(OfferTable table)
    {
        Chosen chosen = table.Best();
        for (int tries = 0; tries < MostTries && table.Objection(chosen) is { } step; tries++)
        {
            table = table.Without(chosen.Steps[step]);
            chosen = table.Best();
        }

        return chosen;
    }
}
