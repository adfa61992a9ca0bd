using Evengrist.Plant.Gs1;
using Evengrist.Plant.Gs1.Links;

namespace Evengrist.Plant.Answers;

/// <summary>What a symbol says, and the other ways to write it.</summary>
/// <param name="ForPeople">The line with brackets.</param>
/// <param name="Transmitted">What a scanner sends behind the symbology identifier; U+001D separates.</param>
/// <param name="Link">The canonical link; null where the elements have none.</param>
/// <param name="EpcUri">The EPC URI; null where there is none, or the length of the company prefix was not given.</param>
/// <param name="Elements">Element by element.</param>
public sealed record Gs1Answer(string ForPeople, string Transmitted, string? Link, string? EpcUri, IReadOnlyList<Gs1ElementAnswer> Elements)
{
    /// <summary>The answer of elements.</summary>
    /// <param name="elements">The elements.</param>
    /// <param name="prefixLength">Digits of the company prefix; null where it is not known.</param>
    /// <param name="year">This year, for the century of dates.</param>
    public static Gs1Answer Of(ElementString elements, int? prefixLength, int year)
    {
        ArgumentNullException.ThrowIfNull(elements);
        var link = DigitalLinks.Write(elements);
        var uri = prefixLength is { } n ? EpcUris.Write(elements, n) : null;
        return new(elements.ToString(), elements.Transmitted(), link.Ok ? link.Value : null, uri is { Ok: true } ? uri.Value : null,
            [.. elements.Elements.Select(e => new Gs1ElementAnswer(e.Code, e.Value, Meaning.Of(e, year)))]);
    }
}

/// <summary>One element.</summary>
/// <param name="Code">The application identifier.</param>
/// <param name="Value">The value as it stands in the symbol.</param>
/// <param name="Says">What it says, in words and units.</param>
public sealed record Gs1ElementAnswer(string Code, string Value, string Says);
