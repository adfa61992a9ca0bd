namespace Evengrist.Plant.Spectra;

/// <summary>One spectrum of a file, with what else is written of its sample.</summary>
/// <param name="Id">Name of the sample; its number in the file where none is given.</param>
/// <param name="Line">Where it stands, from 1.</param>
/// <param name="Values">Channel by channel.</param>
/// <param name="Columns">What else is written, by the heading: the text, and the column it stands in (0 where the file has none).</param>
public sealed record SpectrumRow(string Id, int Line, IReadOnlyList<double> Values, IReadOnlyDictionary<string, (string Text, int Column)> Columns);
