using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>One row of a grade table: a factor, what it is a share of, how it is recorded, and its limit in each grade.</summary>
public sealed record GradeFactor
{
    /// <summary>What it is, in the words of the trade.</summary>
    public required string Words { get; init; }

    /// <summary>The property that is read; <see cref="Property.None"/> for a sum.</summary>
    public Property What { get; init; }

    /// <summary>The properties whose recorded values are added; empty for a factor that is read.</summary>
    public IReadOnlyList<Property> SumOf { get; init; } = [];

    /// <summary>The unit of the limits.</summary>
    public required string Unit { get; init; }

    /// <summary>The moisture basis of a share of solids; not stated otherwise.</summary>
    public Basis MoistureBasis { get; init; }

    /// <summary>Decimals at which it is recorded before it is compared, 0 to 6.</summary>
    public required int Decimals { get; init; }

    /// <summary>Whether the limit is the least that will do; the most otherwise.</summary>
    public bool AtLeast { get; init; }

    /// <summary>What the per cent is a per cent of.</summary>
    public required SampleBasis Basis { get; init; }

    /// <summary>One limit for each grade, best first.</summary>
    public required IReadOnlyList<GradeLimit> Limits { get; init; }

    /// <summary>Names of the classes and subclasses the row is for; empty for all.</summary>
    public IReadOnlyList<string> Only { get; init; } = [];

    /// <summary>Names of the classes and subclasses the row is not for.</summary>
    public IReadOnlyList<string> Except { get; init; } = [];

    /// <summary>Whether the row is disregarded in mixed wheat.</summary>
    public bool NotInMixed { get; init; }

    /// <summary>The factor it is a part of: nothing of the whole is nothing of the part.</summary>
    public Property PartOf { get; init; }

    /// <summary>Whether the row counts only where it was read; the answer says where it was not.</summary>
    public bool WhereRead { get; init; }

    /// <summary>The portion usually examined; empty where not known.</summary>
    public string Portion { get; init; } = "";

    /// <summary>Where the limits stand.</summary>
    public required string Source { get; init; }

    /// <summary>How well they are known here.</summary>
    public SourceMark Mark { get; init; } = SourceMark.Read;

    /// <summary>A word of doubt; empty for none.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether it is a sum of other factors.</summary>
    public bool IsSum => SumOf.Count > 0;

    /// <summary>The smallest step of a recorded value: 10^−decimals.</summary>
    public decimal Step => Decimals switch { 0 => 1m, 1 => 0.1m, 2 => 0.01m, 3 => 0.001m, _ => 1m / (decimal)Math.Pow(10, Decimals) };

    /// <summary>Whether any grade has a limit.</summary>
    public bool HasLimit => Limits.Any(l => l.Value is not null || !l.IsRead);

    /// <summary>
    /// The best grade whose limit a recorded value meets, from 0; the number of grades where it meets none; null where a limit that was not read decides.
    /// </summary>
    public int? GradeOf(decimal recorded)
    {
        for (var i = 0; i < Limits.Count; i++)
        {
            if (!Limits[i].IsRead)
            {
                return null;
            }

            if (Limits[i].Value is not { } limit || (AtLeast ? recorded >= limit : recorded <= limit))
            {
                return i;
            }
        }

        return Limits.Count;
    }

    /// <summary>Whether the row is for wheat of a class and subclass.</summary>
    /// <param name="wheat">The class whose limits hold.</param>
    /// <param name="subclass">Name of the subclass; empty for none.</param>
    /// <param name="mixed">Whether the wheat is mixed.</param>
    public bool IsFor(WheatClass wheat, string subclass, bool mixed)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        bool Names(IReadOnlyList<string> names) => names.Contains(wheat.Name) || (subclass.Length > 0 && names.Contains(subclass));
        return !(mixed && NotInMixed) && (Only.Count == 0 || Names(Only)) && !Names(Except);
    }
}
