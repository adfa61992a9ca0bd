namespace Evengrist.Plant.Epcis;

/// <summary>What each type of event may and must hold, as the ratified JSON binding of EPCIS 2.0 has it.</summary>
internal static class EventRules
{
    public static readonly IReadOnlyDictionary<string, Shape> ByType = new Dictionary<string, Shape>
    {
        ["ObjectEvent"] = Of(["action"], Object, "epcList quantityList action persistentDisposition ilmd"),
        ["AggregationEvent"] = Of(["action"], Aggregation, "parentID childEPCs childQuantityList action"),
        ["TransactionEvent"] = Of(["action", "bizTransactionList"], Transaction, "parentID epcList quantityList action"),
        ["TransformationEvent"] = Of([], Transformation, "inputEPCList inputQuantityList outputEPCList outputQuantityList transformationID persistentDisposition ilmd"),
        ["AssociationEvent"] = Of(["action", "parentID"], Association, "parentID childEPCs childQuantityList action"),
    };

    /// <summary>An event of somebody's own type.</summary>
    public static readonly Shape Extended = new ObjectShape(Members("")) { Required = ["type", "eventTime", "eventTimeZoneOffset"], MayHoldAnything = true }.ToShape();

    private static Shape Of(string[] required, Shape further, string own)
    {
        var shape = new ObjectShape(Members(own + " bizStep disposition readPoint bizLocation bizTransactionList sourceList destinationList sensorElementList")) { Required = ["type", "eventTime", "eventTimeZoneOffset", .. required], MayExtend = true };
        return (part, faults) =>
        {
            shape.Look(part, faults);
            further(part, faults);
        };
    }

    private static Dictionary<string, Shape> Members(string own)
    {
        var members = new Dictionary<string, Shape>
        {
            ["@context"] = Shaped.Context, ["type"] = Shapes.Text, ["eventTime"] = Shapes.Time, ["recordTime"] = Shapes.Time, ["eventTimeZoneOffset"] = Shapes.Offset, ["eventID"] = Shapes.Uri,
            ["certificationInfo"] = Shaped.Certification, ["errorDeclaration"] = Shaped.ErrorDeclaration,
        };
        foreach (var name in own.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            members[name] = name switch
            {
                "action" => Shapes.Action,
                "bizStep" => Shapes.Word(CbvWords.BusinessStep),
                "disposition" => Shapes.Word(CbvWords.Disposition),
                "persistentDisposition" => Shaped.PersistentDisposition,
                "readPoint" or "bizLocation" => Shaped.Place,
                "bizTransactionList" => Shapes.ListOf(Shaped.Transaction),
                "sourceList" => Shapes.ListOf(Shaped.Party("source")),
                "destinationList" => Shapes.ListOf(Shaped.Party("destination")),
                "sensorElementList" => Shaped.Sensors,
                "ilmd" => Shaped.Ilmd,
                "parentID" or "transformationID" => Shapes.Uri,
                _ when name.EndsWith("QuantityList", StringComparison.Ordinal) || name == "quantityList" => Shaped.Quantities,
                _ => Shaped.Epcs,
            };
        }

        return members;
    }

    private static void Object(Part part, Faults faults)
    {
        Need(part, faults, part.HasItems("epcList", 0) || part.HasItems("quantityList") || (part.HasItems("sensorElementList") && part.Has("readPoint")),
            "what was observed: epcList, quantityList with at least one, or sensorElementList together with readPoint");
        if (part.Member("ilmd") is { } ilmd && part.Member("action") is { Text: not "ADD" } action)
        {
            faults.Add(ilmd.Told($"ilmd may stand only with the action ADD; the action is {Fault.Show(action.Text)}."));
        }
    }

    private static void Aggregation(Part part, Faults faults) => Need(part, faults, HasChildren(part), "childEPCs or childQuantityList with at least one; only the action DELETE may leave them out");

    private static void Association(Part part, Faults faults) => Aggregation(part, faults);

    private static void Transaction(Part part, Faults faults)
    {
        if (part.Has("bizTransactionList"))
        {
            Need(part, faults, part.HasItems("bizTransactionList"), "bizTransactionList with at least one");
        }

        Need(part, faults, part.HasItems("epcList", 0) || part.HasItems("quantityList"), "epcList, or quantityList with at least one");
    }

    private static void Transformation(Part part, Faults faults)
    {
        var (goesIn, comesOut) = (part.HasItems("inputEPCList") || part.HasItems("inputQuantityList"), part.HasItems("outputEPCList") || part.HasItems("outputQuantityList"));
        Need(part, faults, (goesIn && comesOut) || (part.Has("transformationID") && (goesIn || comesOut)), "what went in and what came out, or one of them with a transformationID");
    }

    private static bool HasChildren(Part part) => part.HasItems("childEPCs") || part.HasItems("childQuantityList") || part.Member("action") is { Text: "DELETE" };

    private static void Need(Part part, Faults faults, bool holds, string expected)
    {
        if (!holds)
        {
            faults.Add(Fault.AtPath(part.Path.ToString(), "", expected));
        }
    }
}
