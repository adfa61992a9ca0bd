using System.Globalization;
using Evengrist.Milling.Suggesting;
using Evengrist.Records.Milling;
using Microsoft.AspNetCore.Http.Extensions;

namespace Evengrist.Web.Sights.Flow;

/// <summary>Addresses of a unit's pages on paper that carry what was typed of wheat, tests, prices and streams.</summary>
public static class TrialLink
{
    private static readonly string[] Basics = ["unit", "flow", "moisture", "ash", "protein", "basis", "hardness", "fn", "survey", "tests", "releases", "flour", "feed", "patent"];

    private static readonly string[] OfThePage = ["unit", "trial", "done", "asof", "draws", "page"];

    /// <summary>Another page of the same mill with the same basics.</summary>
    public static string To(string path, IQueryCollection typed, string unit, params IEnumerable<KeyValuePair<string, string>> more)
    {
        ArgumentNullException.ThrowIfNull(typed);
        return path + new QueryBuilder(Basics.Skip(1).Where(typed.ContainsKey).Select(k => KeyValuePair.Create(k, typed[k].ToString())).Prepend(KeyValuePair.Create("unit", unit)).Concat(more));
    }

    /// <summary>What was typed of a trial: all but the unit and what the page says by itself.</summary>
    public static IReadOnlyDictionary<string, string> Typed(IQueryCollection typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        return typed.Where(t => !OfThePage.Contains(t.Key) && t.Value.ToString().Length > 0).ToDictionary(t => t.Key, t => t.Value.ToString(), StringComparer.Ordinal);
    }

    /// <summary>The page that opens a kept trial.</summary>
    public static string Open(KeptTrial trial, params IEnumerable<KeyValuePair<string, string>> more)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return "/milling/trial" + new QueryBuilder(trial.Paper.Typed.Prepend(KeyValuePair.Create("trial", trial.Paper.Name)).Prepend(KeyValuePair.Create("unit", trial.Paper.Unit)).Concat(more));
    }

    /// <summary>Moves as fields of a trial.</summary>
    /// <param name="moves">The moves.</param>
    /// <param name="moisturePercent">Moisture of the wheat, wet basis.</param>
    public static IEnumerable<KeyValuePair<string, string>> Fields(IReadOnlyList<Move> moves, double moisturePercent)
    {
        var cloths = string.Join('\n', moves.Where(m => m.Kind is MoveKind.Cloth).Select(m => $"{m.Passage} {N(m.From)} {N(m.To)}"));
        return
        [
            .. moves.Where(m => m.Kind is not MoveKind.Cloth).Select(m => m.Kind switch
            {
                MoveKind.Gap => KeyValuePair.Create($"gap-{m.Passage}", N(m.To)),
                MoveKind.Air => KeyValuePair.Create($"air-{m.Passage}", N(m.To)),
                _ => KeyValuePair.Create("then-flow", N(m.To / (1 - (moisturePercent / 100)))),
            }),
            .. cloths.Length > 0 ? [KeyValuePair.Create("cloths", cloths)] : Array.Empty<KeyValuePair<string, string>>(),
        ];
    }

    private static string N(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
