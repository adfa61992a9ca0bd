using Evengrist.Bins.Shape;

namespace Evengrist.Plant.Cases;

/// <summary>A bin posed in JSON with the weigh-outs that its pack factor is to be found from.</summary>
/// <param name="Shape">The bin.</param>
/// <param name="WeighOuts">At least one.</param>
public sealed record WeighOutCase(BinShape Shape, IReadOnlyList<WeighOut> WeighOuts)
{
    private const int Most = 100;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
          "shape":     {{BinCases.ShapeSchema}}
          "weighOuts": [ { "code": text, "before": { "ullage", "surface", "from", "uncertainty" }, "after": { ... },
                           "testWeight": { "value", "unit", "durum", "uncertainty" } or "density": { "kgPerM3", "uncertainty" },
                           "weighedTonnes": number, "weighedUncertainty": t, one standard uncertainty } ... ]
        }
        """,
        """
        { "shape": { "diameterMetres": 10, "wallMetres": 20 },
          "weighOuts": [ { "code": "12 Nov", "before": { "ullage": 3.5, "surface": "level" }, "after": { "ullage": 11.5, "surface": "level" },
                           "density": { "kgPerM3": 789.39, "uncertainty": 5 }, "weighedTonnes": 515.8, "weighedUncertainty": 1.0 } ] }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<WeighOutCase> Read(Stream stream) => JsonCase.Read<WeighOutCase>(stream, (root, _) =>
    {
        if (!root.IsObject("shape", "weighOuts"))
        {
            return null;
        }

        var shape = BinCases.Shape(root);
        var weighOuts = (root.Member("weighOuts")?.Items(Most) ?? []).Select(One).OfType<WeighOut>().ToArray();
        return shape is null ? null : new WeighOutCase(shape, weighOuts);
    });

    private static WeighOut? One(JsonNode node)
    {
        if (!node.IsObject("code", "before", "after", "testWeight", "density", "weighedTonnes", "weighedUncertainty"))
        {
            return null;
        }

        var (code, before, after, density) = (node.Text("code"), BinCases.Sounding(node.Member("before")), BinCases.Sounding(node.Member("after")), BinCases.Density(node));
        var (weighed, uncertainty) = (node.Member("weighedTonnes")?.Number(0.001m, 100_000m), node.Member("weighedUncertainty")?.Number(0m, 10_000m));
        return before is null || after is null || density is null || weighed is null || uncertainty is null ? null
            : new WeighOut(code, before, after, density, (double)weighed, (double)uncertainty);
    }
}
