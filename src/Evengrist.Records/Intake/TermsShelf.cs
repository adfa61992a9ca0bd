using System.Text.RegularExpressions;
using Evengrist.Intake;

namespace Evengrist.Records.Intake;

/// <summary>The contracts of the shelf as terms, by the title that stands on a ticket.</summary>
public sealed partial class TermsShelf
{
    private readonly Dictionary<string, ContractTerms> byTitle = new(StringComparer.OrdinalIgnoreCase);

    private TermsShelf(IEnumerable<Paper> contracts)
    {
        foreach (var contract in contracts)
        {
            if (TermsJson.TryRead(contract.Json, out var terms, out _))
            {
                byTitle[$"{contract.Code} v{contract.Version}"] = terms;
            }
        }

        All = [.. byTitle.Values.OrderBy(t => t.Code, StringComparer.OrdinalIgnoreCase).ThenByDescending(t => t.Version)];
    }

    /// <summary>Every version whose terms can be read, by code, the newest first.</summary>
    public IReadOnlyList<ContractTerms> All { get; }

    /// <summary>The contracts a mill keeps.</summary>
    public static TermsShelf Of(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return new TermsShelf(mill.Contracts.All());
    }

    /// <summary>The terms that a ticket names (<c>CODE v1</c>, <c>CODE 1</c>, or a code alone for its newest version); null where there are none.</summary>
    public ContractTerms? Find(string? named)
    {
        var text = (named ?? "").Trim();
        var title = Title().Match(text) is { Success: true } match ? $"{match.Groups["code"].Value} v{match.Groups["version"].Value}" : text;
        return byTitle.GetValueOrDefault(title) ?? All.FirstOrDefault(t => t.Code.Equals(title, StringComparison.OrdinalIgnoreCase));
    }

    [GeneratedRegex(@"^(?<code>\S+) v?(?<version>\d+)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Title();
}
