using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Results of one test, as typed; on the bench's form and over HTTP.</summary>
public sealed class BenchRow
{
    /// <summary>What is typed for a share of solids reported on the sample's own moisture.</summary>
    public const string AsIs = "as is";

    /// <summary>A <see cref="Property"/> by name.</summary>
    public string? What { get; set; }

    /// <summary>Code of the method.</summary>
    public string? Method { get; set; }

    /// <summary>Code of the instrument.</summary>
    public string? Instrument { get; set; }

    /// <summary>Values, a blank between duplicates.</summary>
    public string? Values { get; set; }

    /// <summary>Unit; the usual one of the property where empty.</summary>
    public string? Unit { get; set; }

    /// <summary>Moisture basis of a share of solids: <c>14mb</c>, <c>dry</c>, or <see cref="AsIs"/>.</summary>
    public string? Basis { get; set; }

    /// <summary>Whether anything was typed.</summary>
    public bool IsTyped => !string.IsNullOrWhiteSpace(Values);

    /// <summary>The property; none where it is none.</summary>
    public Property WhatRead => TypedProperty.Read(What);

    /// <summary>The entry; null where there is a fault, which is then said.</summary>
    /// <param name="moisture">Moisture of the sample, %; null where it is not known.</param>
    /// <param name="faults">Takes the faults.</param>
    public ResultEntry? Read(decimal? moisture, ICollection<string> faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        var before = faults.Count;
        if (WhatRead == Property.None)
        {
            faults.Add($"\"{What}\" is no property: write Protein, Ash, Moisture, FallingNumber, WetGluten or another.");
            return null;
        }

        var words = WhatRead.Words();
        var basis = BasisRead(moisture, words, faults);
        var values = TypedValues.Read(char.ToUpperInvariant(words[0]) + words[1..], Values, faults);
        return faults.Count > before ? null : new ResultEntry(WhatRead, (Method ?? "").Trim(), (Instrument ?? "").Trim(), values, string.IsNullOrWhiteSpace(Unit) ? Readings.UnitsOf(WhatRead)[0] : Unit.Trim(), basis);
    }

    // A basis left out is refused later, in the ledger's own words.
    private Basis BasisRead(decimal? moisture, string words, ICollection<string> faults)
    {
        var text = (Basis ?? "").Trim();
        if (text.Length == 0)
        {
            return default;
        }

        if (text.Equals(AsIs, StringComparison.OrdinalIgnoreCase))
        {
            if (moisture is { } percent and >= 0 and < 100)
            {
                return Quantities.Basis.At(percent);
            }

            faults.Add($"{words} as it is says nothing without the moisture of the sample: type the moisture beside it, or give {words} on a fixed basis.");
            return default;
        }

        if (!Quantities.Basis.TryParse(text, out var basis))
        {
            faults.Add($"{words}: \"{text}\" is no basis: write dry, 14mb or another, or {AsIs}.");
        }

        return basis;
    }
}
