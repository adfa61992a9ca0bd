using Evengrist.Intake.Sampling;
using Evengrist.Laboratory.Sampling;
using Evengrist.Web.Sights.Season;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A toxin plan as it is asked for with the address of its page.</summary>
public sealed class ToxinAsk
{
    /// <summary>Toxins and where they may be limited in wheat flour, in µg/kg: EU figures, from memory but for DON.</summary>
    public static IReadOnlyList<(string Code, string Words, double Limit, string Source)> Toxins { get; } =
    [
        ("don", "deoxynivalenol (DON)", 600, "EU, milling products, from 1 July 2024: a farmers' union note; check the regulation"),
        ("ota", "ochratoxin A", 3, "EU, cereal products: from memory, check before use"),
        ("afb1", "aflatoxin B₁", 2, "EU, cereal products: from memory, check before use"),
        ("af", "aflatoxins, total", 4, "EU, cereal products: from memory, check before use; US action level 20"),
        ("zon", "zearalenone", 75, "EU, flour: from memory, check before use"),
    ];

    private static readonly double[] Shares = [0.25, 0.5, 0.75, 0.9, 1, 1.1, 1.25, 1.5, 2, 3];

    /// <summary>Reads what was typed.</summary>
    public ToxinAsk(Func<string, string?> typed)
    {
        // Where another toxin was chosen, the figures typed for the one before are not its own.
        ArgumentNullException.ThrowIfNull(typed);
        var isSame = typed("was") is not { } was || was == typed("toxin");
        Fields = new TypedFields(key => isSame || key == "toxin" ? typed(key) : null);
        var (code, usual) = (Fields.Text("toxin", "don"), Toxins[0]);
        Toxin = Toxins.FirstOrDefault(t => t.Code == code) is { Code: not null } found ? found : usual;
        Rule(Toxin.Code == code, $"The toxin is one of {string.Join(", ", Toxins.Select(t => t.Code))}; read “{code}”.");
        (Limit, AcceptAt, Tonnes) = (Fields.Needed("maximum", "Limit", Toxin.Limit), Fields.Number("accept", "Accepted up to"), Fields.Needed("tonnes", "Lot, t", 25));
        AcceptAt ??= Limit;
        Rule(Limit is > 0 and <= 1e6 && AcceptAt is > 0 and <= 1e6, "The limit and what is accepted up to are above 0 and at most 1,000,000 µg/kg.");
        Rule(Tonnes is > 0 and <= 100_000, "A lot is above 0 and up to 100,000 t.");
        var step = ProbePatterns.EuMycotoxin.Steps.First(s => s.UpTo is not { } most || (decimal)Math.Clamp(Tonnes, 0, 100_000) <= most);
        Step = step;
        var (kilograms, determinations) = (Fields.Needed("kg", "Sample that is ground, kg", (step.CompositeGrams ?? 0) / 1000.0), Fields.Needed("n", "Determinations", 1));
        Rule(determinations is >= 1 and <= 100 && determinations == Math.Floor(determinations), "Determinations are a whole number from 1 to 100.");
        if (IsDon)
        {
            var sizes = new DonSizes(kilograms, Fields.Needed("portion", "Ground portion, g", 25), (int)determinations);
            Rule(sizes.AreSound, "The sample is above 0 and up to 1,000 kg, the portion above 0 and up to 100,000 g.");
            Chance = milligrams => AcceptanceModel.Accepted(new AcceptanceSpec(Limit / 1000, AcceptAt!.Value / 1000, sizes), milligrams / 1000);
            Relative = content => DonVariance.Of(content / 1000, sizes).StandardDeviation / (content / 1000);
        }
        else
        {
            double? s = Fields.Number("sampling", "Sampling, %"), p = Fields.Number("preparation", "Preparation, %"), a = Fields.Number("analysis", "Analysis, %");
            IsUnknown = s is null || p is null || a is null;
            var test = new ToxinTest(s ?? 0, p ?? 0, a ?? 0, kilograms, (int)determinations);
            foreach (var fault in test.Faults())
            {
                Rule(false, fault);
            }

            Chance = content => test.Accepted(content, AcceptAt!.Value);
            Relative = _ => test.Relative;
        }
    }

    /// <summary>What was typed.</summary>
    public TypedFields Fields { get; }

    /// <summary>The toxin.</summary>
    public (string Code, string Words, double Limit, string Source) Toxin { get; }

    /// <summary>Whether it is DON, of which a variance is held.</summary>
    public bool IsDon => Toxin.Code == "don";

    /// <summary>What a lot must not exceed, µg/kg.</summary>
    public double Limit { get; }

    /// <summary>Highest result that is accepted, µg/kg.</summary>
    public double? AcceptAt { get; }

    /// <summary>Mass of the lot.</summary>
    public double Tonnes { get; }

    /// <summary>Increments and aggregate sample that the EU rule asks of such a lot.</summary>
    public ProbeStep Step { get; }

    /// <summary>Whether the laboratory gave no standard deviations of a toxin of which none is held.</summary>
    public bool IsUnknown { get; }

    /// <summary>True content, relative standard deviation, chance to accept.</summary>
    public IReadOnlyList<(double Content, double Relative, double Accepted)> Rows => Fields.Faults.Count > 0 || IsUnknown ? [] : [.. Shares.Select(s => (s * Limit, Relative(s * Limit), Chance(s * Limit)))];

    private Func<double, double> Chance { get; }

    private Func<double, double> Relative { get; }

    private void Rule(bool holds, string otherwise)
    {
        if (!holds && !Fields.Faults.Contains(otherwise))
        {
            Fields.Fault(otherwise);
        }
    }
}
