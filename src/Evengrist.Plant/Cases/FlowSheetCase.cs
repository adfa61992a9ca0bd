using System.Text;
using Evengrist.Milling.Sheet;

namespace Evengrist.Plant.Cases;

/// <summary>A flow sheet posed in JSON, as the mill keeps it.</summary>
public static class FlowSheetCase
{
    /// <summary>Most bytes of a sheet.</summary>
    public const int MostBytes = 1024 * 1024;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>What a sheet looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "name", "firstBreak": code of the passage that takes the wheat, "tonnesPerDay"?: wheat the unit is built for, t in 24 h,
          "passages": [ {
            "code", "kind": "Break" | "Sizing" | "Reduction" | "Purifying" | "Finishing" | "Grading",
            "rolls" (break, sizing, reduction): { "gapMicrometres", "lengthMillimetres": roll face in all, "flutesPerCentimetre"?: 0 is smooth,
                       "disposition"? (fluted): "SharpToSharp" | "SharpToDull" | "DullToSharp" | "DullToDull", fast roll's side first, "differential"?: 1.25, "fastMetresPerSecond"?: 6 },
            "detacher"? (smooth rolls): true, "clothSquareMetres"?: 5, "airMetresPerSecond" and "lifted": [ spouts ] (purifier),
            "cloths": [ { "apertureMicrometres", "leaves": "Overs" | "Throughs", "to": [ spouts ], "note"?: trade number } ... in the order stock meets them ],
            "rest": [ spouts ] of what no cloth let leave
          } ... ],
          "products": [ { "code": unlike any passage, "kind": "Flour" | "Bran" | "Wheatfeed" | "Germ" } ... ]
        }
        A spout is { "to": code of a passage or product, "share"?: 1 }; the shares of one outlet are 1 together.
        """,
        """
        { "name": "One break", "firstBreak": "B1", "tonnesPerDay": 20,
          "passages": [ { "code": "B1", "kind": "Break", "rolls": { "gapMicrometres": 500, "lengthMillimetres": 1000, "flutesPerCentimetre": 4, "disposition": "SharpToSharp", "differential": 2.5 },
                          "cloths": [ { "apertureMicrometres": 1000, "leaves": "Overs", "to": [ { "to": "bran" } ] }, { "apertureMicrometres": 132, "leaves": "Throughs", "to": [ { "to": "1B" } ] } ],
                          "rest": [ { "to": "M1" } ] },
                        { "code": "M1", "kind": "Reduction", "rolls": { "gapMicrometres": 50, "lengthMillimetres": 1000 }, "cloths": [ { "apertureMicrometres": 132, "leaves": "Throughs", "to": [ { "to": "1M" } ] } ],
                          "rest": [ { "to": "M1", "share": 0.5 }, { "to": "feed", "share": 0.5 } ] } ],
          "products": [ { "code": "1B", "kind": "Flour" }, { "code": "1M", "kind": "Flour" }, { "code": "bran", "kind": "Bran" }, { "code": "feed", "kind": "Wheatfeed" } ] }
        """);

    /// <summary>Reads a sheet; what cannot be milled on is a fault too.</summary>
    public static Parsed<FlowSheet> Read(Stream stream)
    {
        if (PosedBytes.Of(stream, MostBytes) is not { } bytes)
        {
            return Parsing.Failed<FlowSheet>(Fault.OfFile("a larger sheet", "at most 1 MiB"));
        }

        try
        {
            return FlowSheetJson.TryRead(Strict.GetString(bytes.Span), out var sheet, out var faults) ? Parsing.Got(sheet) : Parsing.Failed<FlowSheet>([.. faults.Select(f => Fault.Told("", f))]);
        }
        catch (DecoderFallbackException)
        {
            return Parsing.Failed<FlowSheet>(Fault.OfFile("bytes that are no UTF-8", "text in UTF-8"));
        }
    }
}
