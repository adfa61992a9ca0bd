namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>
/// Check values and answers reckoned by an independent implementation in another language (tracing report, section 9: "check value",
/// "oracle (independent implementation)"), for the default seed and number of bins.
/// </summary>
internal static class PublishedTables
{
    private static readonly Dictionary<string, string[]> CropYear = new()
    {
        ["nodes / edges"] = ["1695784 / 6063497"],
        ["block starts layer, run, stream, blend, pack"] = ["20000, 41024, 43944, 160744, 195784"],
        ["edges into layer, run, stream, blend, pack"] = ["21024, 350400, 233560, 209976, 5248537"],
        ["Σ parent id, Σ child id"] = ["980355946575, 5042492167854"],
        ["Σ weight"] = ["1675784"],
        ["Σ kg trucks; runs; packs"] = ["539422020; 525600000; 315000000"],
        ["back 420784"] = ["843 trucks, 7398 edges, Σ = 1.000000000", "top 3056: 0.011530672, 3059: 0.011265285, 3057: 0.011198739"],
        ["back 468784"] = ["537 trucks, 4728 edges, ", "top 3953: 0.011004196, 3952: 0.010958897, "],
        ["back 516784"] = ["336 trucks, 1606 edges, ", "top 4652: 0.014090902, "],
        ["forward 5272"] = ["38274 packs, 133949 edges, 17284.2552 kg in packs, 20101 packs above 1 ppm", "top 629194: 17.519195 kg"],
        ["forward 6363"] = ["26996 packs, 93277 edges, 15010.5521 kg in packs, 18814 packs above 1 ppm"],
        ["forward 7454"] = ["47282 packs, 160305 edges, 15218.6631 kg in packs, 32703 packs above 1 ppm"],
    };

    private static readonly Dictionary<string, string[]> Tenth = new()
    {
        ["nodes / edges"] = ["169582 / 604175"],
        ["block starts layer, run, stream, blend, pack"] = ["2000, 4106, 4398, 16078, 19582"],
        ["edges into layer, run, stream, blend, pack"] = ["2106, 34377, 23320, 21468, 522904"],
        ["Σ parent id, Σ child id"] = ["9770212288, 50422154488"],
        ["Σ weight"] = ["167582"],
        ["Σ kg trucks; runs; packs"] = ["53898780; 52560000; 31500000"],
        ["back 42082"] = ["449 trucks, 6439 edges, ", "top 126: 0.012718755, "],
        ["forward 527"] = ["46256 packs, 156380 edges, 16354.7783 kg in packs"],
    };

    public static IReadOnlyCollection<string> Names(GenealogySpec spec) => Table(spec).Keys;

    public static string[] Wanted(GenealogySpec spec, string name) => Table(spec).GetValueOrDefault(name, []);

    private static Dictionary<string, string[]> Table(GenealogySpec spec) =>
        spec.IsPublished(1.0) ? CropYear : spec.IsPublished(0.1) ? Tenth : [];
}
