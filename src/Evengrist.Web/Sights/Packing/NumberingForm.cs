using System.Globalization;
using Evengrist.Packing.Codes;
using Evengrist.Records;
using Evengrist.Records.Packing;

namespace Evengrist.Web.Sights.Packing;

/// <summary>How pallets are numbered, as typed.</summary>
public sealed class NumberingForm
{
    /// <summary>The company prefix.</summary>
    public string? Prefix { get; set; }

    /// <summary>The extension digit; 0 where left out.</summary>
    public string? Extension { get; set; }

    /// <summary>The first serial; 1 where left out.</summary>
    public string? First { get; set; }

    /// <summary>Keeps it as the next version; every fault where it cannot be.</summary>
    public IReadOnlyList<string> Keep(Mill mill, string? by, string nameless)
    {
        var faults = new List<string>(string.IsNullOrWhiteSpace(by) ? [nameless] : []);
        int Whole(string what, string? text, int otherwise)
        {
            if (string.IsNullOrWhiteSpace(text))
            {
                return otherwise;
            }

            if (!int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                faults.Add($"{what} is a whole number; read \"{text.Trim()}\".");
            }

            return number;
        }

        var numbering = new UnitNumbering((Prefix ?? "").Trim(), Whole("The extension digit", Extension, 0)) { First = Whole("The first serial", First, 1) };
        if (faults.Count == 0 && !UnitNumbering.TryRead(numbering.ToJson(), out _, out var wrong))
        {
            faults.AddRange(wrong);
        }

        if (faults.Count == 0)
        {
            KeepUnitNumbering.Keep(mill, numbering, by!.Trim());
        }

        return faults;
    }
}
