namespace Evengrist.Season.Bands;

/// <summary>What comes of asking how many bands.</summary>
public abstract record BandsOutcome;

/// <summary>The cost of the year by number of bands.</summary>
/// <param name="Rows">One bin first.</param>
/// <param name="Currency">Of the money.</param>
public sealed record BandsPlanned(IReadOnlyList<BandRow> Rows, string Currency) : BandsOutcome;

/// <summary>There is no answer: bad input, a year whose demands clash, or a failure.</summary>
/// <param name="Why">As the planner names it.</param>
public sealed record BandsNotPlanned(SeasonOutcome Why) : BandsOutcome;

/// <summary>A number of bands.</summary>
/// <param name="Design">The bands.</param>
/// <param name="Cost">Cost of the year with them, money; what the harvest itself is paid is not in it.</param>
/// <param name="EvenCost">Cost of the year with as many bands of even tonnes, money; not a number where it was not reckoned.</param>
/// <param name="MostTonnes">Of each band the most that lies there at the end of a period in the year with them, t: what bins have to hold.</param>
/// <param name="Commingled">What it costs when two neighbours fall into one bin; reckoned for the largest number of bands, null for the others.</param>
public sealed record BandRow(BandDesign Design, double Cost, double EvenCost, IReadOnlyList<double> MostTonnes, CommingledBin? Commingled);

/// <summary>Two bands that fell into one bin.</summary>
/// <param name="Lower">The one.</param>
/// <param name="Upper">The other.</param>
/// <param name="Cost">By how much the year is dearer, money.</param>
public sealed record CommingledBin(HarvestBand Lower, HarvestBand Upper, double Cost);
