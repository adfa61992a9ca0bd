namespace Evengrist.Tests.Milling.Sheet;

/// <summary>A small invented flow sheet with one of each kind of passage.</summary>
internal static class Small
{
    public const string Json = """
        {
          "name": "Small",
          "firstBreak": "B1",
          "tonnesPerDay": 20,
          "passages": [
            {
              "code": "B1", "kind": "Break", "rolls": { "gapMicrometres": 500, "lengthMillimetres": 1000, "flutesPerCentimetre": 4, "disposition": "SharpToSharp", "differential": 2.5 }, "clothSquareMetres": 6,
              "cloths": [{ "apertureMicrometres": 1000, "leaves": "Overs", "to": [{ "to": "F1" }] }, { "apertureMicrometres": 300, "leaves": "Overs", "to": [{ "to": "P1" }] }, { "apertureMicrometres": 132, "leaves": "Throughs", "to": [{ "to": "1B" }] }],
              "rest": [{ "to": "M1", "share": 0.6 }, { "to": "S1", "share": 0.4 }]
            },
            {
              "code": "S1", "kind": "Sizing", "rolls": { "gapMicrometres": 100, "lengthMillimetres": 800 }, "detacher": true,
              "cloths": [{ "apertureMicrometres": 500, "leaves": "Overs", "to": [{ "to": "G1" }] }], "rest": [{ "to": "M1" }]
            },
            {
              "code": "M1", "kind": "Reduction", "rolls": { "gapMicrometres": 50, "lengthMillimetres": 700 },
              "cloths": [{ "apertureMicrometres": 132, "leaves": "Throughs", "to": [{ "to": "1M" }] }], "rest": [{ "to": "P1" }]
            },
            {
              "code": "P1", "kind": "Purifying", "airMetresPerSecond": 1.2, "lifted": [{ "to": "feed" }], "clothSquareMetres": 2,
              "cloths": [{ "apertureMicrometres": 400, "leaves": "Throughs", "to": [{ "to": "M1" }] }, { "apertureMicrometres": 600, "leaves": "Throughs", "to": [{ "to": "S1" }] }], "rest": [{ "to": "F1" }]
            },
            { "code": "F1", "kind": "Finishing", "cloths": [{ "apertureMicrometres": 450, "leaves": "Throughs", "to": [{ "to": "feed" }] }], "rest": [{ "to": "bran" }] },
            { "code": "G1", "kind": "Grading", "cloths": [{ "apertureMicrometres": 800, "leaves": "Overs", "to": [{ "to": "germ" }] }], "rest": [{ "to": "feed" }] }
          ],
          "products": [{ "code": "1B", "kind": "Flour" }, { "code": "1M", "kind": "Flour" }, { "code": "bran", "kind": "Bran" }, { "code": "feed", "kind": "Wheatfeed" }, { "code": "germ", "kind": "Germ" }]
        }
        """;

    public static string But(string what, string by)
    {
        Assert.Equal(2, Json.Split(what).Length);
        return Json.Replace(what, by, StringComparison.Ordinal);
    }
}
