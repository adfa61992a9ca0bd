namespace Evengrist.Ledger.Reckoned;

/// <summary>
/// The core over the outlet first, bottom to top, then the surface from the top layer down. Of every layer that falls in, the
/// core share stands over the outlet; new grain falls on the crater and so leaves before the old grain at the sides.
/// </summary>
internal sealed class CoreContent : Content
{
    private readonly double share;
    private readonly PlugContent core;
    private readonly List<Layer> sides;
    private double sideGrams;

    public CoreContent(double share)
        : this(share, new PlugContent(), [], 0)
    {
    }

    private CoreContent(double share, PlugContent core, List<Layer> sides, double sideGrams)
    {
        this.share = share;
        this.core = core;
        this.sides = sides;
        this.sideGrams = sideGrams;
    }

    public override double Grams => core.Grams + sideGrams;

    public override double Alike => core.Grams > 0 ? Math.Min(core.Alike, sideGrams > 0 ? core.Grams : double.PositiveInfinity)
        : sides.Count > 1 ? sides[^1].Grams
        : double.PositiveInfinity;

    /// <summary>
    /// With nothing left in the core what falls in goes straight out again, its core share by the core and the rest over the surface; only what it
    /// falls short of the draw comes from the layer it fell on.
    /// </summary>
    public override double AlikeFilled(double filledPerDrawn) => core.Grams > 0 || filledPerDrawn <= 0 ? Alike
        : filledPerDrawn < 1 && sides.Count > 1 ? sides[^1].Grams / (1 - filledPerDrawn)
        : double.PositiveInfinity;

    public override void Fill(int parcel, double grams)
    {
        if (share > 0)
        {
            core.Fill(parcel, grams * share);
        }

        var aside = grams * (1 - share);
        if (aside <= 0)
        {
            return;
        }

        sideGrams += aside;
        if (sides.Count > 0 && sides[^1].Parcel == parcel)
        {
            sides[^1] = sides[^1] with { Grams = sides[^1].Grams + aside };
        }
        else
        {
            sides.Add(new Layer(parcel, aside));
        }
    }

    public override void Draw(double wanted, List<Layer> taken)
    {
        var fromCore = Math.Min(wanted, core.Grams);
        core.Draw(wanted, taken);
        wanted -= fromCore;
        while (wanted > Nothing && sides.Count > 0)
        {
            var top = sides[^1];
            if (top.Grams > wanted + Nothing)
            {
                sides[^1] = top with { Grams = top.Grams - wanted };
                sideGrams -= wanted;
                taken.Add(top with { Grams = wanted });
                return;
            }

            taken.Add(top);
            sides.RemoveAt(sides.Count - 1);
            sideGrams -= top.Grams;
            wanted -= top.Grams;
        }

        if (sides.Count == 0)
        {
            sideGrams = 0;
        }
    }

    /// <summary>Bottom first: what stands at the sides with what is left of the same parcel in the core; then what only the core holds.</summary>
    /// <remarks>The sides go from the top and the core from the bottom, so a parcel found in the core alone lies above all others.</remarks>
    public override void List(List<Layer> into)
    {
        var inCore = new List<Layer>();
        core.List(inCore);
        foreach (var side in sides)
        {
            var i = inCore.FindIndex(c => c.Parcel == side.Parcel);
            into.Add(i < 0 ? side : side with { Grams = side.Grams + inCore[i].Grams });
            if (i >= 0)
            {
                inCore.RemoveAt(i);
            }
        }

        into.AddRange(inCore);
    }

    public override Content Copy(IParcelMaker maker) => new CoreContent(share, (PlugContent)core.Copy(maker), [.. sides], sideGrams);

    public override void Renumber(Func<int, int> number)
    {
        core.Renumber(number);
        sides.Renumber(number);
    }
}
