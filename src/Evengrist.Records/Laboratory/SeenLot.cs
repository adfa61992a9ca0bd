using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Records.Laboratory;

/// <summary>A lot as it stands at a moment: where its packages are, what was decided, what its readings say.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Packages">Its packages.</param>
/// <param name="Decisions">What was decided of it by then, the first first.</param>
/// <param name="Specifications">The specifications that hold for it.</param>
/// <param name="Judged">The one it is held against; null where the flour has none.</param>
/// <param name="Results">Its lines; empty without one.</param>
/// <param name="Readings">All readings taken of it; those of an instrument found wrong are not judged.</param>
public sealed record SeenLot(
    FlourLot Lot, IReadOnlyList<PackageStand> Packages, IReadOnlyList<LotDecision> Decisions, IReadOnlyList<KeptSpecification> Specifications, KeptSpecification? Judged, IReadOnlyList<LotResult> Results, IReadOnlyList<Reading> Readings)
{
    /// <summary>The decision that stands; null where nothing was decided.</summary>
    public LotDecision? Decision => Decisions.Count > 0 ? Decisions[^1] : null;

    /// <summary>How many packages are here and on hold.</summary>
    public int Held => Packages.Count(p => p.IsHere && p.Hold is not null);

    /// <summary>How many packages are here.</summary>
    public int Here => Packages.Count(p => p.IsHere);

    /// <summary>Packages that went to a customer, in part or whole.</summary>
    public IReadOnlyList<PackageStand> Gone => [.. Packages.Where(p => p.GoneTo is not null)];

    /// <summary>What went to customers.</summary>
    public Mass GoneMass => Gone.Aggregate(Mass.Zero, (sum, p) => sum + p.Gone);

    /// <summary>How it stands.</summary>
    public LotState State => Decision?.Verdict switch
    {
        LotVerdict.Rework => LotState.Rework,
        LotVerdict.Hold => LotState.Held,
        _ when Held > 0 => LotState.Held,
        LotVerdict.Release => LotState.Released,
        LotVerdict.Downgrade => LotState.Downgraded,
        _ => LotState.Waiting,
    };

    /// <summary>What all lines advise; null where there is no specification.</summary>
    public Evengrist.Laboratory.Conformity.ReleaseAdvice? Advice => Results.Count == 0 ? null : Evengrist.Laboratory.Conformity.ReleaseAdvice.Of([.. Results.Select(r => r.Advice).OfType<Evengrist.Laboratory.Conformity.ReleaseAdvice>()]);

    /// <summary>The line that is least likely inside; null where no chance is stated.</summary>
    public LotResult? Weakest => Results.Where(r => r.Outcome is not null).MinBy(r => r.Outcome!.Chance);

    /// <summary>The lot held against legal rules.</summary>
    public IReadOnlyList<LegalVerdict> Against(LegalRules rules, string market)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return [.. rules.Of(market, Lot.Day).Select(r => LegalVerdict.Of(r, (what, basis) => LotJudge.Value(Results, what, basis)))];
    }
}
