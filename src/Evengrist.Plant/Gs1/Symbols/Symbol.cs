namespace Evengrist.Plant.Gs1.Symbols;

/// <summary>A symbol as dark and light modules, without its quiet zone.</summary>
public sealed class Symbol
{
    private readonly bool[,] dark;

    internal Symbol(SymbolKind kind, bool[,] dark, string forPeople)
    {
        (Kind, this.dark, ForPeople) = (kind, dark, forPeople);
        Quiet = kind switch { SymbolKind.Gs1128 or SymbolKind.PlainBars => 10, SymbolKind.QrLink => 4, _ => 1 };
    }

    /// <summary>Which symbology.</summary>
    public SymbolKind Kind { get; }

    /// <summary>What stands beside it for people.</summary>
    public string ForPeople { get; }

    /// <summary>Modules from side to side.</summary>
    public int Columns => dark.GetLength(0);

    /// <summary>Modules from top to bottom; 1 for bars.</summary>
    public int Rows => dark.GetLength(1);

    /// <summary>Modules that have to stay light on each side (ISO/IEC 15417, 16022 and 18004).</summary>
    public int Quiet { get; }

    /// <summary>Dark modules beside each other, row by row: column and row of the first, and how many.</summary>
    public IEnumerable<(int Column, int Row, int Length)> Runs()
    {
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var from = column;
                while (column < Columns && dark[column, row])
                {
                    column++;
                }

                if (column > from)
                {
                    yield return (from, row, column - from);
                }
            }
        }
    }
}
