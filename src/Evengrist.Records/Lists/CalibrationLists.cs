using Evengrist.Laboratory.Bake;
using Evengrist.Laboratory.Samples;
using Evengrist.Laboratory.Watch;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Laboratory;

namespace Evengrist.Records.Lists;

/// <summary>Calibrations of spectra, settings of bias, blends that were guessed and then measured, and the sampling plan.</summary>
internal static class CalibrationLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("spectral-calibrations", "Calibrations of spectra that are kept, a row for each version; errors in the unit of the property", new ListOf<KeptCalibration>()
                .Text("property", k => k.Calibration.Purpose.Property).Whole("version", k => k.Version).Unit(k => k.Calibration.Purpose.Unit).Text("basis", k => k.Calibration.Purpose.Basis).Text("reference method", k => k.Calibration.Purpose.Method).Text("treatment", k => k.Calibration.Pretreatment.ToString())
                .Whole("factors", k => k.Calibration.Factors).Whole("samples", k => k.Calibration.Samples, ListUnit.Piece, ListOrigin.Seen).Number("least reference", ListOrigin.Seen, null, k => UsualColumns.Exact(k.Calibration.Least)).Number("greatest reference", ListOrigin.Seen, null, k => UsualColumns.Exact(k.Calibration.Most))
                .Reckoned("SEC", null, k => k.Calibration.Errors.Calibration).Reckoned("SECV", null, k => k.Calibration.Errors.CrossValidation).Reckoned("SEP, where samples were kept back", null, k => k.Calibration.Errors.Prediction).Reckoned("bias of those", null, k => k.Calibration.Errors.Bias)
                .Whole("changes of bias and slope since", k => k.Calibration.Adjustments.Count).Text("kept by", k => k.By).Moment("kept", k => k.Recorded),
            (mill, ask) => SpectralCalibrations.All(mill).Where(k => ask.Names(k.Code) || ask.Names(k.Calibration.Purpose.Property))),
        MillList.Of("instrument-biases", "Biases that a named person set in instruments; readings stay as they were read", new ListOf<(BiasSetting Setting, string By)>()
                .Text("instrument", r => r.Setting.Instrument).Text("property", r => r.Setting.What.Words()).Moment("from", r => r.Setting.At).Number("old", ListOrigin.Stated, null, r => r.Setting.Old).Number("new", ListOrigin.Stated, null, r => r.Setting.New).Unit(r => Readings.UnitsOf(r.Setting.What)[0])
                .Whole("pairs", r => r.Setting.Pairs, null, ListOrigin.Seen).Text("why", r => r.Setting.Reason).Text("by", r => r.By),
            (mill, ask) => InstrumentBiases.All(mill).Where(b => ask.Holds(b.Setting.At) && ask.Names(b.Setting.Instrument))),
        MillList.Of("measured-blends", "Blends of flours whose dough property was guessed and then measured, a row for each flour in them", new ListOf<(MeasuredBlend Blend, BlendPart Part, int Version, string By)>()
                .Text("blend", r => r.Blend.Code).Whole("version", r => r.Version).Text("property and unit", r => r.Blend.Property).Text("flour", r => r.Part.Flour).Number("share of the blend", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(100 * r.Part.Share)).Number("value of the flour", ListOrigin.Seen, null, r => UsualColumns.Exact(r.Part.Value))
                .Reckoned("guess, in proportion", null, r => r.Blend.Linear).Number("measured", ListOrigin.Seen, null, r => UsualColumns.Exact(r.Blend.Measured)).Text("kept by", r => r.By),
            (mill, ask) => MeasuredBlends.Newest(mill).Where(b => ask.Names(b.Blend.Code) && (ask["property"] is not { Length: > 0 } property || b.Blend.Property == property)).SelectMany(b => b.Blend.Parts.Select(p => (b.Blend, p, b.Version, b.By)))),
        MillList.Of("lab-plan", "Sampling plan of the laboratory in use, a row for each line", new ListOf<(PlanLine Line, int Version, string By)>()
                .Text("line", r => r.Line.Code).Text("where and how often", r => r.Line.Words).Number("longest between samples", ListOrigin.Stated, ListUnit.Hour, r => UsualColumns.Exact(r.Line.EveryHours)).Text("tests", r => string.Join("; ", r.Line.Tests.Select(t => t.Words))).Kept(r => r.Version, r => r.By),
            (mill, ask) => KeepLabPlan.Newest(mill) is var (plan, version, by) ? plan.Lines.Where(l => ask.Names(l.Code)).Select(l => (l, version, by)) : []),
    ];
}
