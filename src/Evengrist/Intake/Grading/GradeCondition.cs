using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>A condition of a subclass, special grade or rejection: a recorded reading on one side of a value, or something noticed.</summary>
public sealed record GradeCondition
{
    private GradeCondition()
    {
    }

    /// <summary>The property read; <see cref="Property.None"/> for an observation.</summary>
    public Property What { get; private init; }

    /// <summary>The side.</summary>
    public Bound Bound { get; private init; }

    /// <summary>The value, in the usual unit of the property.</summary>
    public decimal Value { get; private init; }

    /// <summary>Decimals at which the reading is recorded first.</summary>
    public int Decimals { get; private init; }

    /// <summary>What must have been noticed; <see cref="GradeObservation.None"/> for a reading.</summary>
    public GradeObservation Seen { get; private init; }

    /// <summary>A reading on one side of a value.</summary>
    public static GradeCondition Reads(Property what, Bound bound, decimal value, int decimals) => new() { What = what, Bound = bound, Value = value, Decimals = decimals };

    /// <summary>Something noticed.</summary>
    public static GradeCondition Shows(GradeObservation seen) => new() { Seen = seen };

    /// <summary>Whether it holds; null where it was not looked for.</summary>
    public bool? Holds(SampleValues values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (Seen != GradeObservation.None)
        {
            return values.Has(Seen);
        }

        if (values.Read(What, Readings.UnitsOf(What)[0], default) is not { } found)
        {
            return null;
        }

        var recorded = Recorded.To(found, Decimals);
        return Bound switch
        {
            Bound.AtLeast => recorded >= Value,
            Bound.Above => recorded > Value,
            Bound.AtMost => recorded <= Value,
            _ => recorded < Value,
        };
    }

    /// <summary><c>ergot above 0.05 %</c>, <c>musty odour</c>.</summary>
    public override string ToString() => Seen != GradeObservation.None ? Seen.Words() : string.Create(CultureInfo.InvariantCulture,
        $"{What.Words()} {Bound switch { Bound.AtLeast => "at least", Bound.Above => "above", Bound.AtMost => "at most", _ => "below" }} {Value} {Readings.UnitsOf(What)[0]}");
}
