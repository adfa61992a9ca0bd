using Evengrist.Mix;
using Evengrist.Mix.Sheets;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>A mix sheet in plain values, beside what was drawn; shares in per cent, moments in UTC. The drawn part is null where nothing was drawn.</summary>
public sealed record SheetAnswer(
    string Code, int Version, string RecordedBy, string Recorded, string Line, string Flour, string From, string Until, double TonnesPerHour, string SetBy, string Reason, string Withdrawn,
    IReadOnlyList<SetGateAnswer> Gates, IReadOnlyList<SheetExpectedAnswer> Expected, double? HoursDrawn, IReadOnlyList<DrawnGateAnswer> Drawn, IReadOnlyList<DrawnQualityAnswer> Qualities, IReadOnlyList<string> Remarks)
{
    /// <summary>A kept sheet in plain values.</summary>
    public static SheetAnswer Of(string code, int version, string by, NodaTime.Instant recorded, MixSheet sheet, DrawnAgainstSheet? against)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new(
            code, version, by, recorded.ToString(), sheet.Line, sheet.Flour, sheet.From.ToString(), sheet.Until.ToString(), sheet.TonnesPerHour, sheet.SetBy, sheet.Reason, sheet.Withdrawn,
            [.. sheet.Gates.Select(g => new SetGateAnswer(g.Bin, g.Class, g.SharePercent, sheet.SetRate(g)))],
            [.. sheet.Expected.Select(e => new SheetExpectedAnswer(MixCase.NameOf(e.What), e.On == LimitOn.Wheat ? "wheat" : "flour", e.Value, e.Basis.IsStated ? e.Basis.ToString() : null, e.StandardUncertainty))], against?.Hours,
            [.. against?.Gates.Select(g => new DrawnGateAnswer(g.Bin, g.SetPercent, g.DrawnPercent, g.DrawnUncertainty, g.SetTonnes, g.DrawnTonnes)) ?? []],
            [.. against?.Qualities.Select(q => new DrawnQualityAnswer(MixCase.NameOf(q.What), q.Basis.IsStated ? q.Basis.ToString() : null, q.Sheet, q.SheetUncertainty, q.Drawn, q.DrawnUncertainty)) ?? []], against?.Remarks ?? []);
    }
}

/// <summary>A gate as set.</summary>
public sealed record SetGateAnswer(string Bin, string Class, double SharePercent, double SetTonnesPerHour);

/// <summary>A value as it was expected; ± is twice the standard uncertainty.</summary>
public sealed record SheetExpectedAnswer(string What, string On, double Value, string? Basis, double StandardUncertainty);

/// <summary>A gate, set and drawn.</summary>
public sealed record DrawnGateAnswer(string Bin, double SetPercent, double DrawnPercent, double StandardUncertainty, double SetTonnes, double DrawnTonnes);

/// <summary>A property on the sheet and as drawn.</summary>
public sealed record DrawnQualityAnswer(string What, string? Basis, double Sheet, double SheetStandardUncertainty, double Drawn, double DrawnStandardUncertainty);

/// <summary>How a gate gives what it is set to, or why nothing can be said; ± for 95 %.</summary>
public sealed record GateFitAnswer(string Bin, int Sheets, double? OffsetTonnesPerHour, double? OffsetPlusMinus, double? Slope, double? SlopePlusMinus, double? LeastSet, double? MostSet, bool? NewestIsOutside, string? WhyNot)
{
    /// <summary>A fit in plain values.</summary>
    public static GateFitAnswer Of(GateFit fit) => fit switch
    {
        GateFitted line => new(fit.Bin, fit.Sheets, line.Line.Offset, line.OffsetBand, line.Line.Slope, line.SlopeBand, line.LeastSet, line.MostSet, line.Drift?.IsOut, null),
        GateNotFitted none => new(fit.Bin, fit.Sheets, null, null, null, null, null, null, null, none.Reason),
        _ => throw new InvalidOperationException($"A gate was fitted as {fit?.GetType().Name}."),
    };
}

/// <summary>Mix sheets, the newest first, and how gates give what they are set to.</summary>
public sealed record SheetsAnswer(IReadOnlyList<SheetAnswer> Sheets, IReadOnlyList<GateFitAnswer> Gates, string Note)
{
    /// <summary>What is said with it.</summary>
    public const string Said = "A decision aid: a person sets the gates.";
}
