using Evengrist.Bins.Shape;
using Evengrist.Quantities;

namespace Evengrist.Plant.Cases;

/// <summary>A bin posed in JSON with a sounding, or with tonnes whose level is asked for.</summary>
/// <param name="Shape">The bin.</param>
/// <param name="Sounding">The tape; null where a level is asked for.</param>
/// <param name="Holds">The tonnes whose level is asked for; null where a tape is given.</param>
/// <param name="Surface">How the top lies.</param>
/// <param name="Density">The loose density.</param>
/// <param name="Pack">The pack factor.</param>
/// <param name="Reckoned">What the ledger holds; null where nothing is to be compared.</param>
public sealed record SoundingCase(BinShape Shape, Sounding? Sounding, Mass? Holds, Surface Surface, BulkDensity Density, PackFactor Pack, Mass? Reckoned)
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
          "shape":    {{BinCases.ShapeSchema}}
          "sounding": { "ullage": m from the eave down, "surface": "level" | "heaped" | "drawnDown", "from": "wall" | "centre", "uncertainty": m, one standard uncertainty }
                      or "holds": { "t": number }, "surface": ...   the level of which is asked for
          "testWeight": { "value", "unit": "kg/hL" | "lb/bu" | "g/0.5L", "durum": true | false, "uncertainty": kg/hL }   or "density": { "kgPerM3", "uncertainty" }
          "packFactor": { "value", "uncertainty" }   one from memory, uncalibrated, when left out
          "reckoned": { "t": number }   what the ledger holds, to be compared; may be left out
        }
        """,
        """
        { "shape": { "diameterMetres": 10, "wallMetres": 20, "hopperDegrees": 45, "outletMetres": 0.6 },
          "sounding": { "ullage": 3.5, "surface": "heaped" }, "testWeight": { "value": 60.0, "unit": "lb/bu" },
          "packFactor": { "value": 1.04, "uncertainty": 0.01 }, "reckoned": { "t": 1200 } }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<SoundingCase> Read(Stream stream) => JsonCase.Read<SoundingCase>(stream, (root, _) => Of(root));

    private static SoundingCase? Of(JsonNode root)
    {
        if (!root.IsObject("shape", "sounding", "holds", "surface", "testWeight", "density", "packFactor", "reckoned"))
        {
            return null;
        }

        if (root.Has("sounding") == root.Has("holds"))
        {
            root.Fault("one of sounding and holds");
            return null;
        }

        var (shape, density, pack) = (BinCases.Shape(root), BinCases.Density(root), Factor(root));
        var sounding = root.Has("sounding") ? BinCases.Sounding(root.Member("sounding")) : null;
        var holds = root.Has("holds") ? MassOf(root, "holds") : null;
        var surface = sounding?.Surface ?? (root.Has("holds") ? BinCases.Surface(root) : null);
        var reckoned = root.Has("reckoned") ? MassOf(root, "reckoned") : null;
        return shape is null || density is null || pack is null || surface is null || (sounding is null && holds is null) ? null
            : new SoundingCase(shape, sounding, holds, surface.Value, density, pack, reckoned);
    }

    private static Mass? MassOf(JsonNode root, string name) => root.Member(name) is { } node && node.IsObject("t", "kg") ? node.Mass() : null;

    private static PackFactor? Factor(JsonNode root)
    {
        if (!root.Has("packFactor"))
        {
            return PackFactor.FromMemory;
        }

        var node = root.Member("packFactor")!;
        return node.IsObject("value", "uncertainty") && node.Member("value")?.Number(0.8m, 1.3m) is { } value && node.Member("uncertainty")?.Number(0m, 0.5m) is { } uncertainty
            ? new PackFactor((double)value, (double)uncertainty, "as given in the case") : null;
    }
}
