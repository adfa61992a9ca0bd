using Evengrist.Laboratory;
using Evengrist.Quantities;

namespace Evengrist.Streams;

/// <summary>The most ash that what is sold as "flour" may have by the United States' standard of identity, before it is enriched.</summary>
/// <remarks>21 CFR 137.105(a): ash, moisture free, no more than one twentieth of the protein, moisture free, and 0.35. Other markets have their own; this says nothing of them. Read in a copy of the rule: ask for the text in force.</remarks>
public static class FlourIdentity
{
    /// <summary>The rule, as a screen names it.</summary>
    public const string Source = "21 CFR 137.105(a), as read in a copy; judged before enrichment";

    /// <summary>Most ash for a protein, per cent, on the basis the protein is given on.</summary>
    /// <param name="proteinPercent">Protein, per cent.</param>
    /// <param name="basis">Basis of protein and answer.</param>
    public static double MostAshPercent(double proteinPercent, Basis basis) => (proteinPercent / (double)FlourAshLimit.ProteinToAsh) + ((double)FlourAshLimit.Allowance / basis.ToDry);

    /// <summary>Whether a flour keeps it; null where its protein was not read.</summary>
    public static bool? Keeps(StreamSum flour, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(flour);
        return flour.ProteinPercent is { } protein ? flour.AshPercent <= MostAshPercent(protein, basis) : null;
    }
}
