using static Evengrist.Milling.Sheet.FlowSheetWords;

namespace Evengrist.Milling.Sheet;

/// <summary>Whether a flow sheet can be milled on: every outlet leads somewhere, none makes stock, cloths lie in an order that divides, and all stock can leave.</summary>
internal static class FlowSheetCheck
{
    public static IReadOnlyList<string> Of(FlowSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (sheet.Passages.Count is 0 or > FlowSheet.MostPassages)
        {
            return [$"There are {sheet.Passages.Count} passages: give 1 to {FlowSheet.MostPassages}."];
        }

        var codes = sheet.Passages.Select(p => p.Code).Concat(sheet.Products.Select(p => p.Code)).ToArray();
        var known = codes.ToHashSet(StringComparer.Ordinal);
        string[] alone =
        [
            .. string.IsNullOrWhiteSpace(sheet.Name) ? ["The unit has no name: say what it is called."] : Array.Empty<string>(),
            .. sheet.TonnesPerDay is null or (> 0 and <= 5000) ? Array.Empty<string>() : [$"{Number(sheet.TonnesPerDay.Value)} t in 24 h: what a unit is built for lies above 0 and is at most 5000."],
            .. codes.Where(string.IsNullOrWhiteSpace).Select(_ => "A passage or product has no code: give it the mill's own."),
            .. codes.Where(c => c.Length > FlowSheet.LongestCode).Select(c => $"{c}: a code has at most {FlowSheet.LongestCode} characters, so that it can be drawn."),
            .. codes.Where(c => !string.IsNullOrWhiteSpace(c) && c.Any(sign => char.IsWhiteSpace(sign) || char.IsControl(sign) || sign is ',' or '%')).Select(c => $"“{c}”: a code is one word without commas and per cent signs, so that it can be written beside shares."),
            .. codes.Where(c => !string.IsNullOrWhiteSpace(c)).GroupBy(c => c, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands there {g.Count()} times: passages and products each need a code of their own."),
            .. sheet.Passages.Any(p => p.Code == sheet.FirstBreak) ? Array.Empty<string>() : [$"First break {sheet.FirstBreak} is not among the passages: name the one that takes the wheat."],
            .. sheet.Products.Where(p => p.Kind is ProductKind.None).Select(p => $"{p.Code}: say what it is: flour, bran, wheatfeed or germ."),
            .. sheet.Passages.SelectMany(p => OfPassage(p).Concat(Outlets(p, known)).Select(f => $"{p.Code}: {f}.")),
        ];
        return alone.Length > 0 ? alone : [.. FlowSheetPaths.Faults(sheet)];
    }

    private static IEnumerable<string> OfPassage(Passage passage)
    {
        var purifier = passage.Kind is PassageKind.Purifying;
        var ground = passage.Kind is PassageKind.Break or PassageKind.Sizing or PassageKind.Reduction;
        (bool Holds, string Otherwise)[] rules =
        [
            (passage.Kind is not PassageKind.None, "say what the passage is for"),
            (ground == passage.Rolls is not null, ground ? "a break, sizing or reduction has rolls" : "only a break, sizing or reduction has rolls"),
            (passage.Kind is not PassageKind.Break || passage.Rolls is null or { IsFluted: true }, "break rolls are fluted"),
            (!passage.Detacher || passage.Rolls is { IsFluted: false }, "a detacher stands behind smooth rolls only"),
            (purifier == passage.AirMetresPerSecond is not null, purifier ? "a purifier needs the speed of its air" : "only a purifier has air"),
            (passage.AirMetresPerSecond is null or (>= 0.2 and <= 3), "the air of a purifier moves at 0.2 to 3 m/s"),
            (purifier == passage.Lifted.Count > 0, purifier ? "say where what the air lifts goes" : "only a purifier's air lifts stock"),
            (passage.Cloths.Count > 0 || passage.Kind is not (PassageKind.Grading or PassageKind.Finishing), "a sifter or finisher needs a cloth"),
            (passage.Cloths.Count <= 12, "at most 12 groups of cloths"),
            (passage.ClothSquareMetres is > 0 and <= 200, "the cloth area lies above 0 and is at most 200 m²"),
        ];
        return [.. rules.Where(r => !r.Holds).Select(r => r.Otherwise), .. passage.Rolls?.Faults() ?? [], .. Order(passage.Cloths)];
    }

    // What is left between the cloths already passed is bounded from above by the finest cloth whose overs left, from below by the coarsest whose throughs left.
    private static IEnumerable<string> Order(IReadOnlyList<Cloth> cloths)
    {
        var (finest, coarsest) = (double.PositiveInfinity, 0.0);
        foreach (var cloth in cloths)
        {
            var size = Number(cloth.ApertureMicrometres);
            if (!(cloth.ApertureMicrometres is > 0 and <= 4000))
            {
                yield return $"a cloth of {size} µm: apertures lie above 0 and are at most 4000 µm";
            }
            else if (cloth.Leaves is ClothSide.None)
            {
                yield return $"cloth {size} µm: say whether its overs or its throughs leave";
            }
            else if (cloth.ApertureMicrometres >= finest)
            {
                yield return $"cloth {size} µm stands after {Number(finest)} µm whose overs have left: nothing so coarse is left. Put the coarser cloth first";
            }
            else if (cloth.ApertureMicrometres <= coarsest)
            {
                yield return $"cloth {size} µm stands after {Number(coarsest)} µm whose throughs have left: nothing so fine is left. Put the finer cloth first";
            }
            else if (cloth.Leaves is ClothSide.Overs)
            {
                finest = cloth.ApertureMicrometres;
            }
            else
            {
                coarsest = cloth.ApertureMicrometres;
            }
        }
    }

    private static IEnumerable<string> Outlets(Passage passage, HashSet<string> known)
    {
        foreach (var (i, outlet) in passage.Outlets.Index())
        {
            if (outlet.Count == 0)
            {
                yield return $"{passage.Outlet(i)}: leads nowhere. Say which passage or product takes it";
                continue;
            }

            foreach (var spout in outlet.Where(s => !known.Contains(s.To)))
            {
                yield return $"{passage.Outlet(i)}: {(spout.To.Length > 0 ? spout.To : "a spout without a code")} is no passage and no product. Give the code of one";
            }

            var together = outlet.Sum(s => s.Share);
            if (outlet.Any(s => !(s.Share > 0)) || !(Math.Abs(together - 1) <= 1e-9))
            {
                yield return $"{passage.Outlet(i)}: the shares to {string.Join(", ", outlet.Select(s => s.To))} add up to {Number(together)}. Each lies above 0, and together they are 1";
            }
        }
    }
}
