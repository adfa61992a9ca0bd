using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>A posed bake.</summary>
internal static class LabBakeVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("bake", "What to weigh for a bake, flours against a control, bakers taken out, tasters, ranks, a blend's guess. Needs no records.");
        return PosedVerb.Of<LabBakeCase, LabBakeAnswer>(command, voice, LabBakeCase.Help, LabBakeCase.Read, LabBakeAnswer.To, answer => Say(answer, voice));
    }

    private static void Say(LabBakeAnswer answer, Voice voice)
    {
        if (answer.Weigh is { } weigh)
        {
            voice.Say($"weigh flour {Number(weigh.FlourGrams, 2)} g, water {Number(weigh.WaterGrams, 2)} g{string.Concat(weigh.Others.Select(o => $", {o.Name} {Number(o.Grams, 2)} g"))}");
        }

        if (answer.Pairs is { } pairs)
        {
            voice.Say($"trial less control: {Number(pairs.Mean, 3)} ({Number(pairs.Lower, 3)} to {Number(pairs.Upper, 3)}, 95 %){(pairs.P is { } p ? $", p {Number(p, 4)}" : "")}{(pairs.SignedRankP is { } ranks ? $", by signed ranks {Number(ranks, 4)}" : "")}");
        }

        foreach (var contrast in answer.Trial?.Contrasts ?? [])
        {
            voice.Say($"{contrast.Flour} less control: {Number(contrast.Difference, 3)} ± {Number(2 * contrast.StandardError, 3)}, p {Number(contrast.P, 4)}; bakers and doughs taken out");
        }

        if (answer.Tasting is { } tasting)
        {
            voice.Say($"so many right answers by guessing: {Number(tasting.P, 4)}; at 5 % {(tasting.LeastRight5 is { } five ? $"{five} are needed" : "not even all are enough")}, at 1 % {(tasting.LeastRight1 is { } one ? $"{one}" : "not even all")}{(tasting.Distance is { } distance ? $"; d′ {Number(distance, 3)}" : "")}");
        }

        if (answer.Ranks is { } rank)
        {
            voice.Say($"ranks: sums {string.Join(", ", rank.RankSums.Select(r => Number(r, 1)))}; Q {Number(rank.Q, 3)}, p {Number(rank.P, 4)}; two differ beyond {Number(rank.LeastDifference, 2)}");
        }

        if (answer.Blend is { } blend)
        {
            voice.Say($"blend: {Number(blend.Guess, 3)}{(blend.PlusMinus is { } off ? $" ± {Number(off, 3)}" : "")}. {blend.Words}");
        }
    }
}
