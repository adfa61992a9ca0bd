namespace Evengrist.Milling.Sheet;

/// <summary>What is different between two versions of a flow sheet.</summary>
public static class FlowSheetChanges
{
    /// <summary>Each difference as a line, as "B1 gap: 500 µm, now 520 µm"; empty where both say the same.</summary>
    /// <param name="before">The earlier version.</param>
    /// <param name="now">The later one.</param>
    public static IReadOnlyList<string> Of(FlowSheet before, FlowSheet now)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(now);
        var (had, has) = (Lines(before), Lines(now));
        return
        [
            .. had.Where(l => !has.ContainsKey(l.Key)).Select(l => $"{l.Key}: {l.Value}, now gone"),
            .. has.Select(l => had.TryGetValue(l.Key, out var was) ? was == l.Value ? "" : $"{l.Key}: {was}, now {l.Value}" : $"{l.Key}: new, {l.Value}").Where(l => l.Length > 0),
        ];
    }

    private static Dictionary<string, string> Lines(FlowSheet sheet)
    {
        var lines = new Dictionary<string, string>(StringComparer.Ordinal) { ["name"] = sheet.Name, ["first break"] = sheet.FirstBreak };
        if (sheet.TonnesPerDay is { } tonnes)
        {
            lines["built for"] = $"{FlowSheetWords.Number(tonnes)} t in 24 h";
        }

        foreach (var (code, name, says) in sheet.Passages.SelectMany(p => PassageLines.Of(p).Select(l => (p.Code, l.Name, l.Says))))
        {
            lines[$"{code} {name}"] = says;
        }

        foreach (var product in sheet.Products)
        {
            lines[$"product {product.Code}"] = product.Kind.Words();
        }

        return lines;
    }
}
