using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Evengrist.Milling.Sheet;

/// <summary>Where an outlet leads, as a person types and reads it: <c>B2</c>, or <c>1B 30 %, 2B 70 %</c>.</summary>
public static class SpoutText
{
    /// <summary>An outlet as text.</summary>
    public static string Write(IReadOnlyList<Spout> outlet)
    {
        ArgumentNullException.ThrowIfNull(outlet);
        return outlet is [{ Share: 1 } alone] ? alone.To : string.Join(", ", outlet.Select(s => $"{s.To} {(100 * s.Share).ToString("0.##########", CultureInfo.InvariantCulture)} %"));
    }

    /// <summary>Reads an outlet. One code without a share takes what the others leave. Whether the codes are there and the shares are 1 together is asked of the sheet.</summary>
    /// <param name="text">What was typed; nothing is an outlet that leads nowhere.</param>
    /// <param name="outlet">The outlet; null where it cannot be read.</param>
    /// <param name="fault">What is wrong; empty where nothing is.</param>
    public static bool TryRead(string? text, [NotNullWhen(true)] out IReadOnlyList<Spout>? outlet, out string fault)
    {
        (outlet, fault) = (null, "");
        List<(string To, double? Share)> read = [];
        foreach (var part in (text ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var words = part.Replace("%", " % ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words.Length is 0 or > 3 || words is [_, _, not "%"] || words[0] == "%")
            {
                fault = $"write a code, or codes with their shares as 1B 30 %, 2B 70 %; read “{part}”";
                return false;
            }

            if (words.Length == 1)
            {
                read.Add((words[0], null));
            }
            else if (double.TryParse(words[1], NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var percent))
            {
                read.Add((words[0], percent / 100));
            }
            else
            {
                fault = $"the share of {words[0]} is a number in per cent; read “{words[1]}”";
                return false;
            }
        }

        if (read.Count(r => r.Share is null) > 1)
        {
            fault = $"give the shares of {string.Join(", ", read.Where(r => r.Share is null).Select(r => r.To))}; one may go without and takes what is left";
            return false;
        }

        var left = 1 - read.Sum(r => r.Share ?? 0);
        outlet = [.. read.Select(r => new Spout(r.To, r.Share ?? left))];
        return true;
    }
}
