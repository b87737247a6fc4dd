using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Planning.Choosing;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>
/// The place of a step in a plan: by stage; peaks last of the sung ones; a line that begins on an open vowel after those that do not; then from what asks
/// little to what asks much (narrow before open, slow before quick, short before long, small before wide, simple before complex).
/// </summary>
internal readonly record struct OfferOrder(Band Band, Stage Stage, bool IsPeak, FirstVowel FirstVowel, int Demand, string Id) : IComparable<OfferOrder>
{
    public int CompareTo(OfferOrder other)
    {
        int order = (Band, Stage, IsPeak, FirstVowel, Demand).CompareTo((other.Band, other.Stage, other.IsPeak, other.FirstVowel, other.Demand));
        return order != 0 ? order : string.CompareOrdinal(Id, other.Id);
    }
}
