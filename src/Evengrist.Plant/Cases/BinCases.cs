using Evengrist.Bins;
using Evengrist.Bins.Shape;
using Evengrist.Quantities;

namespace Evengrist.Plant.Cases;

/// <summary>Parts that the cases about a bin's shape share.</summary>
internal static class BinCases
{
    public const string ShapeSchema = """{ "diameterMetres" (or "lengthMetres" and "widthMetres"), "wallMetres", "hopperDegrees", "outletMetres", "heapDegrees", "drawnDegrees", "reposeUncertaintyDegrees", "note" }""";

    public static BinShape? Shape(JsonNode root)
    {
        if (root.Member("shape") is not { } node)
        {
            return null;
        }

        if (BinPapers.TryReadShape(node.Raw, out var shape, out var faults))
        {
            return shape;
        }

        foreach (var fault in faults)
        {
            node.Fault($"a shape that can be. {fault}");
        }

        return null;
    }

    public static Sounding? Sounding(JsonNode? node)
    {
        if (node is null || !node.IsObject("ullage", "surface", "from", "uncertainty"))
        {
            return null;
        }

        var (ullage, surface) = (node.Member("ullage")?.Number(0m, 100m), Surface(node));
        var from = node.Has("from") ? Word(node.Member("from")!, ("wall", SoundedFrom.Wall), ("centre", SoundedFrom.Centre)) : SoundedFrom.Wall;
        var uncertainty = node.Has("uncertainty") ? node.Member("uncertainty")!.Number(0m, 5m) : 0.10m;
        return ullage is null || surface is null || from is null || uncertainty is null ? null : new Sounding((double)ullage, surface.Value, from.Value, (double)uncertainty);
    }

    public static Surface? Surface(JsonNode node) =>
        node.Member("surface") is { } word ? Word(word, ("level", Bins.Shape.Surface.Level), ("heaped", Bins.Shape.Surface.Heaped), ("drawnDown", Bins.Shape.Surface.DrawnDown)) : null;

    /// <summary>The density from <c>testWeight</c> or <c>density</c>, of which one must be there.</summary>
    public static BulkDensity? Density(JsonNode node)
    {
        if (node.Has("testWeight") == node.Has("density"))
        {
            node.Fault("one of testWeight and density");
            return null;
        }

        if (node.Has("density"))
        {
            var given = node.Member("density")!;
            return given.IsObject("kgPerM3", "uncertainty") && given.Member("kgPerM3")?.Number(200m, 1000m) is { } density
                ? BulkDensity.Given((double)density, (double)(given.Member("uncertainty", required: false)?.Number(0m, 100m) ?? 10 * BulkDensity.UsualUncertainty)) : null;
        }

        var read = node.Member("testWeight")!;
        if (!read.IsObject("value", "unit", "durum", "uncertainty") || read.Member("value")?.Number(0m, 1000m) is not { } value)
        {
            return null;
        }

        try
        {
            var durum = read.Member("durum", required: false)?.Raw == "true";
            return BulkDensity.Of(TestWeight.Read(value, read.Text("unit"), durum), read.Member("uncertainty", required: false)?.Number(0m, 20m) ?? BulkDensity.UsualUncertainty);
        }
        catch (ArgumentException wrong)
        {
            // What the framework adds to a message (the parameter, the value, on a line of its own) says nothing to a person.
            read.Fault($"a test weight that can be. {wrong.Message.Split(" (Parameter", 2)[0]}");
            return null;
        }
    }

    private static T? Word<T>(JsonNode node, params ReadOnlySpan<(string Word, T Value)> known)
        where T : struct
    {
        var text = node.Text();
        foreach (var (word, value) in known)
        {
            if (word == text)
            {
                return value;
            }
        }

        var words = new List<string>();
        foreach (var (word, _) in known)
        {
            words.Add(word);
        }

        if (text.Length > 0)
        {
            node.Fault($"one of {string.Join(", ", words)}");
        }

        return null;
    }
}
