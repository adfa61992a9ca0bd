namespace Evengrist.Streams.Additions;

/// <summary>Doses, rates and rework of a flour. Page: docs/model/additions.md.</summary>
public static class AdditionsModel
{
    /// <summary>Answers every part that was asked.</summary>
    /// <param name="spec">What is asked.</param>
    /// <param name="tables">The enrichment tables.</param>
    public static AdditionsOutcome Of(AdditionsSpec spec, EnrichmentTables tables)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(tables);
        List<string> faults = [];
        if (spec.FlourTonnesPerHour is { } given && !(given is > 0 and <= 1000))
        {
            faults.Add(FormattableString.Invariant($"Flour: tonnes an hour lie above 0 and at most at 1000; got {given}."));
        }

        var flow = spec.FlourTonnesPerHour is > 0 and <= 1000 ? spec.FlourTonnesPerHour : null;
        return new AdditionsOutcome
        {
            Malt = Malt(spec.Malt, flow, faults), Gluten = Gluten(spec.Gluten, flow, faults), Ascorbic = Ascorbic(spec.Ascorbic, flow, faults), Enrichment = Enrichment(spec.Enrichment, tables, flow, faults),
            Feeder = Checked("Feeder", spec.Feeder, spec.Feeder?.Faults(), faults)?.Found(), TonnesWithout = Without(spec, flow, faults), AshBefore = Ash(spec.Ash, faults),
            Rework = Checked("Rework", spec.Rework, spec.Rework?.Faults(), faults) is { } rework ? Advice(rework) : null,
            Faults = faults,
        };
    }

    private static MaltNeed? Malt(MaltAsk? ask, double? flow, List<string> faults)
    {
        if (ask is null)
        {
            return null;
        }

        if (!(ask.WantedSeconds is >= 60 and <= 1000))
        {
            faults.Add(FormattableString.Invariant($"Malt: a falling number lies from 60 to 1000 s; got {ask.WantedSeconds}."));
            return null;
        }

        var (line, wrong) = MaltLine.Through(ask.Trials, ask.UncertaintyShare);
        faults.AddRange(wrong.Select(w => $"Malt: {w}"));
        if (line is null)
        {
            return null;
        }

        var dose = line.DoseFor(ask.WantedSeconds);
        return new MaltNeed(line, dose, line.DoseUncertainty(ask.WantedSeconds), FeedRate.Of(10 * dose, flow),
        [
            .. dose == 0 ? ["The flour has this falling number, or a lower one, without malt."] : Array.Empty<string>(),
            .. dose > AdditionLimits.MaltGramsPer100Kg ? [FormattableString.Invariant($"That is more than {AdditionLimits.MaltGramsPer100Kg / 1000:0.##} % ({AdditionLimits.Source}).")] : Array.Empty<string>(),
            .. dose > ask.Trials.Max(t => t.GramsPer100Kg) ? ["That is more malt than was tried: the line is drawn beyond its trials."] : Array.Empty<string>(),
            .. line.Trials < MaltLine.Enough ? [$"The line goes through {line.Trials} trials, so that nothing shows its scatter: take {MaltLine.Enough} or more."] : Array.Empty<string>(),
        ]);
    }

    private static (GlutenDose, FeedRate)? Gluten(GlutenAsk? ask, double? flow, List<string> faults)
    {
        if (ask is null)
        {
            return null;
        }

        var (dose, wrong) = GlutenDose.For(ask.BasePercent, ask.WantedPercent, ask.GlutenPercent);
        faults.AddRange(wrong.Select(w => $"Gluten: {w}"));
        return dose is null ? null : (dose, FeedRate.Of(10_000 * dose.KilogramsPer100Kg, flow));
    }

    private static AscorbicNeed? Ascorbic(AscorbicAsk? ask, double? flow, List<string> faults)
    {
        if (ask is null)
        {
            return null;
        }

        if (!(ask.Ppm is > 0 and <= 10_000 && ask.ContentPercent is > 0 and <= 100))
        {
            faults.Add(FormattableString.Invariant($"Ascorbic acid: a dose above 0 ppm and at most 10000, and a content above 0 and at most 100 % are needed; got {ask.Ppm} ppm and {ask.ContentPercent} %."));
            return null;
        }

        return new AscorbicNeed(
            FeedRate.Of(Feeder.PremixGramsPerTonne(ask.Ppm, ask.ContentPercent), flow),
            ask.Ppm > AdditionLimits.AscorbicPpm ? [FormattableString.Invariant($"That is more than {AdditionLimits.AscorbicPpm} ppm ({AdditionLimits.Source}).")] : []);
    }

    private static (EnrichmentTable, PremixDose, FeedRate)? Enrichment(EnrichmentAsk? ask, EnrichmentTables tables, double? flow, List<string> faults)
    {
        if (ask is null)
        {
            return null;
        }

        if (tables.Of(ask.Market, ask.Day ?? NodaTime.LocalDate.MaxIsoValue) is not { } table)
        {
            faults.Add($"Enrichment: no table of {ask.Market} holds then: there are {string.Join(", ", tables.Tables.Select(t => $"{t.Market} from {t.From:uuuu-MM-dd}"))}.");
            return null;
        }

        var (dose, wrong) = PremixDose.For(table, ask.ContentPercent, ask.Own, ask.OveragePercent);
        faults.AddRange(wrong.Select(w => $"Enrichment: {w}"));
        return dose is null ? null : (table, dose, FeedRate.Of(dose.GramsPerTonne, flow));
    }

    private static double? Without(AdditionsSpec spec, double? flow, List<string> faults)
    {
        if (spec.StoodMinutes is not { } minutes)
        {
            return null;
        }

        if (!(minutes is > 0 and <= 100_000) || flow is null)
        {
            faults.Add(FormattableString.Invariant($"Feeder that stood: minutes above 0 and tonnes of flour an hour are needed; got {minutes} minutes."));
            return null;
        }

        return Feeder.TonnesWithout(minutes, flow.Value);
    }

    private static double? Ash(AshAsk? ask, List<string> faults)
    {
        if (ask is null)
        {
            return null;
        }

        if (!(StreamTable.CanBeAsh(ask.AshPercent) && ask.GramsPerTonne is > 0 and <= 100_000 && ask.AdditionAshPercent is >= 0 and <= 100))
        {
            faults.Add("Ash: an ash above 0 and at most 10 %, a dose above 0 and at most 100000 g/t, and an ash of the addition from 0 to 100 % are needed.");
            return null;
        }

        return AdditionLimits.AshBefore(ask.AshPercent, ask.GramsPerTonne, ask.AdditionAshPercent);
    }

    private static ReworkAdvice Advice(ReworkFeed rework) => new(
        rework.Against(), rework.MostThatKeeps(), [.. rework.Values.Select(v => (v, v.With(rework.Percent)))],
        rework.IsEnriched ? ["It was enriched already: a premix dosed on all of the flour gives its nutrients twice. Dose on the fresh flour alone, or count what it brings."] : []);

    private static T? Checked<T>(string name, T? asked, IReadOnlyList<string>? wrong, List<string> faults)
        where T : class
    {
        faults.AddRange((wrong ?? []).Select(w => $"{name}: {w}"));
        return wrong is { Count: 0 } ? asked : null;
    }
}
