using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>Notes, rests and chord symbols as elements; what stands inside them comes in the order that the schema asks for.</summary>
internal sealed class NoteElement(XmlOutput xml)
{
    /// <summary>A whole bar of rest.</summary>
    internal void Rest(Beats length) => xml.Around("note", () =>
    {
        xml.Put("rest", "", ("measure", "yes"));
        xml.Put("duration", length.Ticks);
        xml.Put("voice", "1");
    });

    /// <summary>What a bar lacks to its time signature, where no signature fits it exactly: an unseen rest.</summary>
    internal void Fill(Beats length) => xml.Around("note", () =>
    {
        xml.Put("rest", "");
        xml.Put("duration", length.Ticks);
        xml.Put("voice", "1");
    }, ("print-object", "no"));

    internal void Put(SheetNote note, string? articulation) => xml.Around("note", () =>
    {
        if (note.Pitch is { } pitch)
        {
            PutPitch(pitch);
        }
        else
        {
            xml.Put("rest", "");
        }

        xml.Put("duration", note.Length.Ticks);
        Ties("tie", note);
        xml.Put("voice", "1");
        if (note.Value is { } value)
        {
            PutValue(value);
        }

        Notations(note, note.Pitch is null || note.IsTiedBack ? null : articulation);
        Lyric(note);
    });

    internal void Chord(ChordSymbol chord, Beats offset) => xml.Around("harmony", () =>
    {
        xml.Around("root", () =>
        {
            xml.Put("root-step", chord.Root.Step.ToString());
            Alteration("root-alter", chord.Root);
        });
        xml.Put("kind", chord.Kind);
        if (offset != Beats.Zero)
        {
            xml.Put("offset", offset.Ticks);
        }
    });

    private void PutPitch(Pitch pitch) => xml.Around("pitch", () =>
    {
        xml.Put("step", pitch.Step.ToString());
        Alteration("alter", pitch);
        xml.Put("octave", pitch.Octave);
    });

    private void Alteration(string name, Pitch pitch)
    {
        if (pitch.Alteration != 0)
        {
            xml.Put(name, pitch.Alteration);
        }
    }

    private void PutValue(NoteValue value)
    {
        xml.Put("type", value.Type);
        for (int dot = 0; dot < value.Dots; dot++)
        {
            xml.Put("dot", "");
        }

        if (value.Actual != value.Normal)
        {
            xml.Around("time-modification", () =>
            {
                xml.Put("actual-notes", value.Actual);
                xml.Put("normal-notes", value.Normal);
            });
        }
    }

    private void Notations(SheetNote note, string? articulation)
    {
        if (note is { IsTiedBack: false, IsTiedOn: false } && articulation is null)
        {
            return;
        }

        xml.Around("notations", () =>
        {
            Ties("tied", note);
            if (articulation is not null)
            {
                xml.Around("articulations", () => xml.Put(articulation, ""));
            }
        });
    }

    private void Ties(string name, SheetNote note)
    {
        if (note.IsTiedBack)
        {
            xml.Put(name, "", ("type", "stop"));
        }

        if (note.IsTiedOn)
        {
            xml.Put(name, "", ("type", "start"));
        }
    }

    private void Lyric(SheetNote note)
    {
        if (note.Word is not { } word)
        {
            return;
        }

        xml.Around("lyric", () =>
        {
            xml.Put("syllabic", "single");
            xml.Put("text", word);
            if (note.IsCarried)
            {
                xml.Put("extend", "");
            }
        }, ("number", "1"));
    }
}
