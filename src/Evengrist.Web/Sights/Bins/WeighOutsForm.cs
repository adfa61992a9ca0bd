using Evengrist.Bins.Shape;

namespace Evengrist.Web.Sights.Bins;

/// <summary>The weigh-outs that a bin's pack factor is to be found from, as a person typed them; a line left empty is none.</summary>
public sealed class WeighOutsForm
{
    /// <summary>Lines of the form.</summary>
    public const int Lines = 3;

    /// <summary><c>reckon</c> or <c>keep</c>.</summary>
    public string? Act { get; set; }

    /// <summary>One for each weigh-out.</summary>
    public List<WeighOutLine>? Outs { get; set; }

    /// <summary>A line by its place; an empty one where none was posted.</summary>
    public WeighOutLine Line(int n) => Outs?.ElementAtOrDefault(n) ?? new WeighOutLine();

    /// <summary>The pack factor they come to, or every reason why they come to none.</summary>
    public PackFactorOutcome Reckon(BinShape shape)
    {
        var faults = new List<string>();
        WeighOut?[] read = [.. (Outs ?? []).Index().Where(o => !o.Item.IsEmpty).Select(o => o.Item.Read(o.Index + 1, faults))];
        return faults.Count > 0 ? new PackFactorNotFound(faults) : PackFactorModel.Of(shape, [.. read.OfType<WeighOut>()]);
    }
}

/// <summary>Grain drawn over a scale between two tapes, as typed.</summary>
public sealed class WeighOutLine
{
    /// <summary>What it is called: a date.</summary>
    public string? Code { get; set; }

    /// <summary>Ullage before, m.</summary>
    public string? Before { get; set; }

    /// <summary>How the top lay before.</summary>
    public string? BeforeTop { get; set; }

    /// <summary>Ullage after, m.</summary>
    public string? After { get; set; }

    /// <summary>How the top lay after.</summary>
    public string? AfterTop { get; set; }

    /// <summary>Where both tapes hung.</summary>
    public string? From { get; set; }

    /// <summary>One standard uncertainty of a tape, m.</summary>
    public string? Tape { get; set; }

    /// <summary>Test weight of what was drawn, kg/hL.</summary>
    public string? TestWeight { get; set; }

    /// <summary>What the scale weighed, t.</summary>
    public string? Weighed { get; set; }

    /// <summary>One standard uncertainty of it, t.</summary>
    public string? Scale { get; set; }

    /// <summary>Whether nothing was typed that says anything.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Code + Before + After + Weighed);

    /// <summary>The weigh-out; null where a field of it is none, which is then said.</summary>
    internal WeighOut? Read(int n, List<string> faults)
    {
        var code = (Code ?? "").Trim() is { Length: > 0 } named ? named : $"weigh-out {n}";
        var before = SoundingForm.Tape($"{code}: the ullage before", Before, Tape, BeforeTop, From, faults);
        var after = SoundingForm.Tape($"{code}: the ullage after", After, Tape, AfterTop, From, faults);
        var density = SoundingForm.Density($"{code}: the test weight", TestWeight, faults);
        var weighed = TypedNumber.Read($"{code}: the mass weighed, in t,", Weighed, faults, 0.001, 100_000, demanded: true);
        var scale = TypedNumber.Read($"{code}: the ± of the scale, in t,", Scale, faults, 0, 10_000, demanded: true);
        return before is null || after is null || density is null || weighed is null || scale is null ? null : new WeighOut(code, before, after, density, weighed.Value, scale.Value);
    }
}
