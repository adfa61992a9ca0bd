using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>One factor of a graded sample.</summary>
/// <param name="Factor">The row of the standard.</param>
/// <param name="State">Where its value comes from.</param>
public sealed record FactorResult(GradeFactor Factor, FoundState State)
{
    /// <summary>As found, in the unit of the factor, not rounded; null where it is missing.</summary>
    public decimal? Found { get; init; }

    /// <summary>As recorded, which is what is compared; null where it is missing.</summary>
    public decimal? Recorded { get; init; }

    /// <summary>The grade this factor alone gives, from 0 for the best; null where it is missing or hangs on a limit not read.</summary>
    public int? Alone { get; init; }

    /// <summary>Whether no factor gives a worse grade, this one being below the best grade.</summary>
    public bool Decides { get; init; }

    /// <summary>The way to the next better grade; null at the best.</summary>
    public GradeStep? Better { get; init; }

    /// <summary>The way to the next worse grade; null at the worst, and where no limit lies below.</summary>
    public GradeStep? Worse { get; init; }

    /// <summary>What is missing; empty where nothing is.</summary>
    public IReadOnlyList<Property> Missing { get; init; } = [];

    /// <summary>How the recorded value came about; null where it is missing.</summary>
    public Because? Because { get; init; }

    /// <summary>The recorded value with its decimals; a dash where it is missing.</summary>
    public string RecordedText => Recorded is { } value ? Quantities.Recorded.To(value, Factor.Decimals).ToString("F" + Factor.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : "–";
}
