using System.Globalization;
using Evengrist.Plant.Gs1;
using Evengrist.Plant.Gs1.Symbols;

namespace Evengrist.Plant.Prints.Labels;

/// <summary>Lays a label out from top to bottom, and keeps what went wrong and what is to be told.</summary>
internal sealed class LabelWriter(LabelSize size)
{
    public const double Margin = 4;

    /// <summary>What stays free of all at the edge of the sheet, mm [ours].</summary>
    private const double Edge = 1;

    /// <summary>Module of bars that logistics asks for, and the least a scanner in the hand reads well, mm (GS1 General Specifications, from memory).</summary>
    private const double LogisticModule = 0.495, LeastModule = 0.25, LargestModule = 1;

    private readonly List<Fault> faults = [];
    private readonly List<string> remarks = [];

    public Drawing Sheet { get; } = new(size.Width, size.Height);

    public double Room => size.Width - (2 * Margin);

    /// <summary>Where the next thing begins, mm from above.</summary>
    public double Y { get; set; } = Margin;

    public void Line(string text, double points, bool bold = false, double? room = null) => Y = Sheet.Line(text, Margin, Y, points, bold, room ?? Room);

    public void Paragraph(string text, double points, bool bold = false, double? room = null) => Y = Sheet.Paragraph(text, Margin, Y, points, room ?? Room, bold);

    public void Rule()
    {
        Sheet.Box(Margin, Y + 0.6, Room, 0.3);
        Y += 1.8;
    }

    /// <summary>Bars over the width with their line for people below.</summary>
    public void Bars(ElementString elements, double height)
    {
        Bars(Gs1Symbols.Bars(elements), height);
    }

    /// <summary>The same of a symbol.</summary>
    public void Bars(Parsed<Symbol> made, double height)
    {
        if (!Takes(made, out var symbol))
        {
            return;
        }

        var module = Module(symbol);
        if (module < LeastModule)
        {
            faults.Add(Fault.OfFile(symbol.ForPeople, FormattableString.Invariant($"a shorter value: over {Widest:0} mm the bars would be {module:0.###} mm wide, and at least {LeastModule} mm is asked")));
            return;
        }

        if (module < LogisticModule)
        {
            remarks.Add(FormattableString.Invariant($"The bars of {symbol.ForPeople} are {module:0.###} mm wide; for scanning from a fork truck {LogisticModule} mm is asked (from memory).{(symbol.Kind == SymbolKind.PlainBars ? "" : " The Data Matrix holds the same.")}"));
        }

        var left = Math.Max(Margin, Edge + (symbol.Quiet * module));
        Sheet.Symbol(symbol, left - (symbol.Quiet * module), Y, module, height);
        Y = Sheet.Line(symbol.ForPeople, left, Y + height + 0.6, 9, room: size.Width - Margin - left) + 1.2;
    }

    /// <summary>Whether the bars of elements get the width that logistics asks for.</summary>
    public bool FitsLogistics(ElementString elements) => Gs1Symbols.Bars(elements) is { Ok: true, Value: var symbol } && Module(symbol) >= LogisticModule;

    public void Remark(string words) => remarks.Add(words);

    /// <summary>A word in a heavy frame over the width.</summary>
    public void Stamp(string word, string says)
    {
        var top = Y;
        var low = Sheet.Paragraph(says, Margin + 2, Sheet.Line(word, Margin + 2, top + 1, 20, bold: true), 8, Room - 4) + 0.6;
        Sheet.Box(Margin, top, Room, 0.8);
        Sheet.Box(Margin, low, Room, 0.8);
        Sheet.Box(Margin, top, 0.8, low - top);
        Sheet.Box(Margin + Room - 0.8, top, 0.8, low - top + 0.8);
        Y = low + 2;
    }

    // The quiet zone may lie in the sheet's margin: it is light there.
    private double Widest => size.Width - (2 * Edge);

    private double Module(Symbol symbol) => Math.Min(LogisticModule, Math.Floor(Widest / (symbol.Columns + (2 * symbol.Quiet)) * 200) / 200);

    /// <summary>A square symbol at the left or right margin; gives its side with the quiet zone, 0 where it could not be made.</summary>
    public double Square(Parsed<Symbol> made, bool right, double top, double most)
    {
        if (!Takes(made, out var symbol))
        {
            return 0;
        }

        var modules = symbol.Columns + (2 * symbol.Quiet);
        var module = Math.Min(LargestModule, most / modules);
        Sheet.Symbol(symbol, right ? size.Width - Margin - (modules * module) : Margin, top, module);
        return modules * module;
    }

    /// <summary>Flour is raw, and wheat is an allergen: said on every label.</summary>
    public void Cautions(LabelCase label, double points, double? room = null) => Cautions(label.Contains, points, room);

    /// <inheritdoc cref="Cautions(LabelCase, double, double?)"/>
    public void Cautions(IReadOnlyList<string> contains, double points, double? room = null)
    {
        Paragraph($"CONTAINS WHEAT{string.Concat(contains.Select(c => ", " + c.ToUpperInvariant()))}.", points + 1, bold: true, room);
        Paragraph("Raw flour: not ready to eat. Cook or bake before eating.", points, room: room);
    }

    public static string Weight(decimal kilograms) => string.Create(CultureInfo.InvariantCulture, $"{kilograms:0.###} kg ({Math.Floor(kilograms * 1000 / Quantities.Mass.GramsPerPound * 10) / 10:0.#} lb)");

    public static string Date(NodaTime.LocalDate date) => date.ToString("d MMM uuuu", CultureInfo.InvariantCulture);

    public Parsed<Label> Close(string title, ElementString? elements)
    {
        if (Y > size.Height)
        {
            faults.Add(Fault.OfFile(title, "shorter words: they do not fit the label"));
        }

        return faults.Count > 0 ? Parsing.Failed<Label>(faults) : Parsing.Got(new Label(Sheet, title, elements, remarks));
    }

    private bool Takes(Parsed<Symbol> made, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Symbol? symbol)
    {
        faults.AddRange(made.Faults);
        symbol = made.Ok ? made.Value : null;
        return made.Ok;
    }
}
