using Evengrist.Packing.Lines;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>Lines cleaned down after an allergen, signed and verified by named persons. What is signed is a person's word, never a promise that a product is safe.</summary>
public static class CleanDowns
{
    /// <summary>All of them with what their paper is called, by when the line was clean.</summary>
    public static IReadOnlyList<(string Code, CleanDown Clean)> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(CleanDown.PaperKind).NewestOfEach().Select(p => CleanDown.TryRead(p.Json, out var clean, out _) ? (p.Code, clean) : default).Where(c => c.clean is not null).Select(c => (c.Code, c.clean!)).OrderBy(c => c.Item2.At)];
    }

    /// <summary>Signs that a line is clean; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="line">Code of the line.</param>
    /// <param name="method">How it was cleaned.</param>
    /// <param name="minutes">How long it took.</param>
    /// <param name="at">When it was clean.</param>
    /// <param name="by">Who looked at it and signs.</param>
    public static (CleanDown? Signed, IReadOnlyList<string> Faults) Sign(Mill mill, string line, string method, int minutes, Instant at, string? by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (book, _, _) = KeepLineBook.Newest(mill);
        var last = HallRecords.LastOn(mill, line, at);
        var product = last is null ? null : Products.Find(mill, last);
        var clean = new CleanDown(line, last ?? "", product?.AllergensBeyondWheat ?? [], at, (by ?? "").Trim(), (method ?? "").Trim(), minutes);
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: a clean-down is signed by a named person."] : Array.Empty<string>(),
            .. book.Find(line) is null ? [$"There is no line {line} among the mill's packing lines."] : Array.Empty<string>(),
            .. !string.IsNullOrWhiteSpace(by) && !book.Signers.Contains(by.Trim(), StringComparer.OrdinalIgnoreCase) ? [$"{by.Trim()} may not sign a clean-down. {(book.Signers.Count == 0 ? "Nobody may yet: name persons among the lines." : $"These may: {string.Join(", ", book.Signers)}.")}"] : Array.Empty<string>(),
            .. book.Find(line) is not null && clean.Allergens.Count == 0 ? [last is null ? $"{line} stands clean already: nothing is to be signed." : $"{last} on {line} has no allergen beyond wheat: nothing is to be signed."] : Array.Empty<string>(),
            .. clean.Allergens.Count == 0 ? Array.Empty<string>() : clean.Faults(),
        ];
        if (faults.Distinct().ToArray() is { Length: > 0 } all)
        {
            return (null, all);
        }

        mill.Papers(CleanDown.PaperKind).KeepNext($"{line} {at.ToUnixTimeSeconds()}", clean.ToJson(), by!.Trim());
        return (clean, []);
    }

    /// <summary>Records what the laboratory found of a clean-down; every fault where it cannot be, and then nothing is kept.</summary>
    public static (CleanDown? Verified, IReadOnlyList<string> Faults) Verify(Mill mill, string code, bool isClean, string words, Instant at, string? by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var clean = All(mill).FirstOrDefault(c => c.Code == code).Clean;
        var found = clean is null ? null : clean with { Verified = new(isClean, (words ?? "").Trim(), (by ?? "").Trim(), at) };
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
            .. clean is null ? ["There is no such clean-down."] : Array.Empty<string>(),
            .. clean is not null && at < clean.At ? ["It cannot be verified before it was signed."] : Array.Empty<string>(),
            .. found?.Faults() ?? [],
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        mill.Papers(CleanDown.PaperKind).KeepNext(code, found!.ToJson(), by!.Trim());
        return (found, []);
    }
}
