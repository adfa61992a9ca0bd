using Evengrist.Milling.Sheet;
using Evengrist.Web.Sights.Season;

namespace Evengrist.Web.Sights.Flow;

/// <summary>A passage as a person changes it in a form: what was typed, and the passage it makes.</summary>
public sealed class PassageForm
{
    /// <summary>Rows for cloths beyond those a passage has.</summary>
    private const int MoreCloths = 2;

    private PassageForm(TypedFields fields, Passage? passage, int cloths) => (Fields, Passage, ClothRows) = (fields, passage, cloths);

    /// <summary>What was typed, and what is wrong with it.</summary>
    public TypedFields Fields { get; }

    /// <summary>The passage; null where something cannot be read. Whether it can stand in its sheet is asked of the sheet.</summary>
    public Passage? Passage { get; }

    /// <summary>Rows for cloths that are shown.</summary>
    public int ClothRows { get; }

    /// <summary>Reads the form.</summary>
    /// <param name="was">The passage as it stands.</param>
    /// <param name="typed">What was typed, by field; null for each where the form was not sent.</param>
    public static PassageForm Of(Passage was, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(was);
        ArgumentNullException.ThrowIfNull(typed);
        var fields = new TypedFields(typed);
        var kind = Chosen(fields, "kind", "Kind", was.Kind);
        var rolls = Rolls(fields, was.Rolls);
        var detacher = fields.Text("detacher", typed("kind") is null && was.Detacher ? "on" : "") == "on";
        var (area, air) = (fields.Needed("area", "Cloth area", was.ClothSquareMetres), fields.Number("air", "Air", was.AirMetresPerSecond));
        var lifted = Spouts(fields, "lifted", "What the air lifts", SpoutText.Write(was.Lifted));
        var rows = Math.Min(12, Math.Max(was.Cloths.Count, Enumerable.Range(0, 12).LastOrDefault(i => typed($"aperture{i}") is { Length: > 0 }, -1) + 1) + MoreCloths);
        Cloth?[] cloths = [.. Enumerable.Range(0, rows).Select(i => ClothOf(fields, i, i < was.Cloths.Count ? was.Cloths[i] : null))];
        var rest = Spouts(fields, "rest", "The rest", SpoutText.Write(was.Rest));
        fields.Text("reason", "");
        var passage = fields.Faults.Count > 0 ? null : new Passage(was.Code, kind, [.. cloths.OfType<Cloth>()], rest)
        {
            Rolls = rolls, Detacher = detacher, ClothSquareMetres = area, AirMetresPerSecond = air, Lifted = lifted,
        };
        return new PassageForm(fields, passage, rows);
    }

    // Rolls are there where a gap or a length is.
    private static RollPair? Rolls(TypedFields fields, RollPair? was)
    {
        var (gap, length) = (fields.Number("gap", "Gap", was?.GapMicrometres), fields.Number("length", "Roll length", was?.LengthMillimetres));
        var (flutes, disposition) = (fields.Number("flutes", "Flutes", was?.FlutesPerCentimetre), Chosen(fields, "disposition", "Disposition", was?.Disposition ?? Disposition.None));
        var (differential, speed) = (fields.Number("differential", "Differential", was?.Differential), fields.Number("speed", "Fast roll", was?.FastMetresPerSecond));
        if (gap is null && length is null)
        {
            return null;
        }

        if (gap is null || length is null)
        {
            // What was typed and is no number is a fault already.
            if (fields["gap"].Length == 0 || fields["length"].Length == 0)
            {
                fields.Fault("Rolls: give both gap and length, or leave both empty where the passage has no rolls.");
            }

            return null;
        }

        var usual = new RollPair(gap.Value, length.Value);
        return usual with { FlutesPerCentimetre = flutes ?? 0, Disposition = disposition, Differential = differential ?? usual.Differential, FastMetresPerSecond = speed ?? usual.FastMetresPerSecond };
    }

    // A row whose fields are all empty is no cloth.
    private static Cloth? ClothOf(TypedFields fields, int row, Cloth? was)
    {
        var name = $"Cloth {row + 1}";
        var aperture = fields.Number($"aperture{row}", $"{name}, aperture", was?.ApertureMicrometres);
        var side = Chosen(fields, $"leaves{row}", $"{name}, leaves", was?.Leaves ?? ClothSide.None);
        var to = Spouts(fields, $"to{row}", $"{name}, to", was is null ? "" : SpoutText.Write(was.To));
        var note = fields.Text($"note{row}", was?.Note ?? "");
        if (aperture is null && fields[$"aperture{row}"].Length == 0)
        {
            if (to.Count > 0 || note.Length > 0)
            {
                fields.Fault($"{name}: give its aperture in µm, or empty the row where there is no cloth.");
            }

            return null;
        }

        return new Cloth(aperture ?? 0, side, to, note.Length > 0 ? note : null);
    }

    private static T Chosen<T>(TypedFields fields, string key, string words, T otherwise)
        where T : struct, Enum
    {
        var text = fields.Text(key, otherwise.ToString());
        if (Enum.TryParse<T>(text, out var chosen) && Enum.IsDefined(chosen) && !char.IsAsciiDigit(text[0]))
        {
            return chosen;
        }

        fields.Fault($"{words}: choose one of those offered; read “{text}”.");
        return otherwise;
    }

    private static IReadOnlyList<Spout> Spouts(TypedFields fields, string key, string words, string otherwise)
    {
        if (SpoutText.TryRead(fields.Text(key, otherwise), out var outlet, out var fault))
        {
            return outlet;
        }

        fields.Fault($"{words}: {fault}.");
        return [];
    }
}
