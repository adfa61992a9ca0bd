namespace Evengrist.Demo;

/// <summary>Bins that serve the same purpose in the mixes: one is drawn until it is nearly empty, the others are filled meanwhile.</summary>
internal sealed class BinGroup(string name, double perRunDay, double protein, params string[] bins)
{
    public string Name => name;

    /// <summary>Use, t a running day, in the mean.</summary>
    public double PerRunDay { get; set; } = perRunDay;

    /// <summary>Protein of what is bought for it, per cent 12mb.</summary>
    public double Protein => protein;

    public IReadOnlyList<string> Bins => bins;

    /// <summary>The bin being drawn.</summary>
    public string Current { get; set; } = bins[0];

    public double Tonnes(BinPlan plan) => bins.Sum(b => plan[b].Expected);

    /// <summary>The bin for the next truck: the one with most room, if there is a choice not the one being drawn.</summary>
    public string RoomFor(BinPlan plan) => bins.Where(b => b != Current && plan[b].FreeTonnes > 60).DefaultIfEmpty(Current).MaxBy(b => plan[b].FreeTonnes)!;
}

/// <summary>The groups of bins from 15 September on.</summary>
internal sealed class Larder(BinPlan plan)
{
    public BinGroup Strong { get; } = new("strong", 126, 13.7, "B06", "B17", "B19");

    public BinGroup Middling { get; } = new("middling", 154, 12.9, "B04", "B03", "B15", "B14");

    public BinGroup Plain { get; } = new("plain", 105, 11.9, "B01", "B02");

    public BinGroup Diluent { get; } = new("diluent", 35, 11.0, "B07");

    public BinGroup Spring { get; } = new("spring", 62, 14.8, "B10", "B11", "B12", "B16");

    public BinGroup Stretch { get; } = new("stretch", 28, 13.9, "B05");

    public BinGroup Soft { get; } = new("soft", 60, 9.7, "B08", "B09");

    public BinGroup White { get; } = new("white", 30, 13.0, "B13");

    /// <summary>The group that would run out first if nothing were bought; the diluent is used up and not bought again.</summary>
    public BinGroup LeastCovered()
    {
        var groups = new[] { Strong, Middling, Plain, Spring, Stretch, Soft, White };
        return groups.Where(g => g.Bins.Any(b => plan[b].FreeTonnes > 60)).MinBy(g => g.Tonnes(plan) / g.PerRunDay)!;
    }

    /// <summary>The groups a flour's wheat is drawn from, with their shares.</summary>
    public IReadOnlyList<(BinGroup Group, double Share)> Mix(Flour flour)
    {
        var dilutes = Diluent.Tonnes(plan) > 60;
        Plain.PerRunDay = dilutes ? 105 : 140;
        return flour switch
        {
            Flour.WB => [(Strong, 0.45), (Middling, 0.55)],
            Flour.AP => dilutes ? [(Plain, 0.75), (Diluent, 0.25)] : [(Plain, 1)],
            Flour.HG => [(Spring, 0.69), (Stretch, 0.31)],
            Flour.PA => [(Soft, 1)],
            _ => [(White, 1)],
        };
    }
}
