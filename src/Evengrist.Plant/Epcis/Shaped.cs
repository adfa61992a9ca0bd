namespace Evengrist.Plant.Epcis;

/// <summary>The objects inside events, as the ratified JSON binding of EPCIS 2.0 has them.</summary>
internal static class Shaped
{
    public static Shape Context { get; } = Shapes.Either(
        (part, faults) => ContextItem(part, faults, "a URI, an object of prefixes, or a list of these"),
        Shapes.ListOf((part, faults) => ContextItem(part, faults, "a URI or an object of prefixes")));

    public static Shape Epcs { get; } = Shapes.ListOf(Shapes.Uri, once: true);

    public static Shape Quantities { get; } = Shapes.ListOf(new ObjectShape(new Dictionary<string, Shape> { ["epcClass"] = Shapes.Uri, ["quantity"] = Shapes.Number, ["uom"] = Shapes.Unit }) { Required = ["epcClass"] }.ToShape());

    public static Shape Transaction { get; } = new ObjectShape(new Dictionary<string, Shape> { ["type"] = Shapes.Word(CbvWords.TransactionType), ["bizTransaction"] = Shapes.Uri }) { Required = ["bizTransaction"] }.ToShape();

    public static Shape Place { get; } = new ObjectShape(new Dictionary<string, Shape> { ["id"] = Shapes.Uri }) { Required = ["id"], MayExtend = true }.ToShape();

    public static Shape Ilmd { get; } = new ObjectShape(new Dictionary<string, Shape>()) { MayExtend = true }.ToShape();

    public static Shape ErrorDeclaration { get; } = new ObjectShape(new Dictionary<string, Shape>
    {
        ["declarationTime"] = Shapes.Time, ["reason"] = Shapes.Word(CbvWords.ErrorReason), ["correctiveEventIDs"] = Shapes.ListOf(Shapes.Uri),
    }) { Required = ["declarationTime"], MayExtend = true }.ToShape();

    public static Shape PersistentDisposition { get; } = Persistent;

    public static Shape Certification { get; } = Shapes.Either(Shapes.Uri, Shapes.ListOf(Shapes.Uri));

    private static readonly Dictionary<string, Shape> Device = new()
    {
        ["time"] = Shapes.Time, ["deviceID"] = Shapes.Uri, ["deviceMetadata"] = Shapes.Uri, ["rawData"] = Shapes.Uri, ["dataProcessingMethod"] = Shapes.Uri, ["bizRules"] = Shapes.Uri,
    };

    private static readonly Shape Report = new ObjectShape(new Dictionary<string, Shape>(Device)
    {
        ["type"] = Shapes.Word(CbvWords.Measurement), ["exception"] = Shapes.Word(CbvWords.SensorAlert), ["microorganism"] = Shapes.Uri, ["chemicalSubstance"] = Shapes.Uri, ["value"] = Shapes.Number,
        ["component"] = Shapes.Word(CbvWords.Component), ["stringValue"] = Shapes.Text, ["booleanValue"] = Shapes.Boolean, ["hexBinaryValue"] = Shapes.Hexadecimal, ["uriValue"] = Shapes.Uri, ["minValue"] = Shapes.Number,
        ["maxValue"] = Shapes.Number, ["meanValue"] = Shapes.Number, ["sDev"] = Shapes.Number, ["percRank"] = Shapes.Number, ["percValue"] = Shapes.Number, ["uom"] = Shapes.Text, ["coordinateReferenceSystem"] = Shapes.Uri,
    }) { MayExtend = true }.ToShape();

    public static Shape Sensors { get; } = Shapes.ListOf(new ObjectShape(new Dictionary<string, Shape>
    {
        ["sensorMetadata"] = new ObjectShape(new Dictionary<string, Shape>(Device) { ["startTime"] = Shapes.Time, ["endTime"] = Shapes.Time }) { MayExtend = true }.ToShape(),
        ["sensorReport"] = Shapes.ListOf(Report, least: 1),
    }) { Required = ["sensorReport"], MayExtend = true }.ToShape());

    public static Shape Party(string name) => new ObjectShape(new Dictionary<string, Shape> { ["type"] = Shapes.Word(CbvWords.SourceType), [name] = Shapes.Uri }) { Required = ["type", name] }.ToShape();

    private static void Persistent(Part part, Faults faults)
    {
        var words = Shapes.ListOf(Shapes.Word(CbvWords.Disposition), least: 1, once: true);
        new ObjectShape(new Dictionary<string, Shape> { ["set"] = words, ["unset"] = words }).Look(part, faults);
        if (part.Json.ValueKind == System.Text.Json.JsonValueKind.Object && !part.Has("set") && !part.Has("unset"))
        {
            faults.Add(part.Wrong("set, unset, or both"));
        }
    }

    private static void ContextItem(Part part, Faults faults, string expected)
    {
        if (part.Json.ValueKind != System.Text.Json.JsonValueKind.Object && !(part.IsText && UriForm.IsUri(part.Text)))
        {
            faults.Add(part.Wrong(expected));
        }
    }
}
