namespace WarmupConsole.Storage.Yaml;

/// <summary>Finds what somebody probably meant.</summary>
public static class Nearest
{
    private const int MostOffered = 3;
    private const int LongestWord = 60;

    /// <summary>The names nearest to a word, nearest first: at most three, each no further than a third of its letters.</summary>
    public static IReadOnlyList<string> To(string word, IEnumerable<string> names) =>
        word.Length > LongestWord
            ? []
            : [.. names
                .Select(name => (Name: name, Distance: Distance(word.ToLowerInvariant(), name)))
                .Where(near => near.Distance <= Math.Max(1, near.Name.Length / 3))
                .OrderBy(near => near.Distance).ThenBy(near => near.Name, StringComparer.Ordinal)
                .Take(MostOffered).Select(near => near.Name)];

    /// <summary>How many letters must be put in, left out, changed or swapped with their neighbour.</summary>
    private static int Distance(string a, string b)
    {
        int[,] cost = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            for (int j = 0; j <= b.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : Cheapest(cost, a, b, (i, j));
            }
        }

        return cost[a.Length, b.Length];
    }

    private static int Cheapest(int[,] cost, string a, string b, (int I, int J) at)
    {
        (int i, int j) = at;
        int change = cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
        int best = Math.Min(change, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
        bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
        return swapped ? Math.Min(best, cost[i - 2, j - 2] + 1) : best;
    }
}
