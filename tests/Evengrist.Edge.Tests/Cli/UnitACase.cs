using System.Text.Json.Nodes;
using Evengrist.Demo;
using Evengrist.Milling.Sheet;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>The demonstration's Unit A, posed with a hard wheat.</summary>
internal static class UnitACase
{
    /// <summary>Sheet and wheat with further members, edited.</summary>
    public static string With(JsonObject members, Action<JsonObject>? edit = null)
    {
        members["sheet"] = JsonNode.Parse(FlowSheetJson.Write(HouseFlowSheets.Of('A')));
        members["wheat"] = JsonNode.Parse("""{ "tonnesPerHour": 17.5, "moisturePercent": 16, "ashPercent": 1.7, "proteinPercent": 14.4, "basis": "dry" }""");
        edit?.Invoke(members);
        return members.ToJsonString();
    }
}
