using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Cli.Rooms;

/// <summary>Questions about a posed bin: what a tape says, and how densely the bin packs.</summary>
internal static class BinVerbs
{
    public static Command Sound(Voice voice)
    {
        var command = new Command("sound", "Tonnes from a sounding by the shape of a posed bin, with ± and against the ledger; or the level of so many tonnes. Needs no records.");
        return PosedVerb.Of<SoundingCase, SoundingAnswer>(command, voice, SoundingCase.Help, SoundingCase.Read, SoundingAnswer.To, Say);

        void Say(SoundingAnswer answer)
        {
            var table = new TextTable("what", "value");
            table.Add("level at the wall, m", N(answer.LevelAtWallM, 2));
            table.Add("ullage at the wall, m", N(answer.UllageAtWallM, 2));
            table.Add("volume, m³", N(answer.VolumeM3, 1));
            table.Add("loose density, kg/m³", $"{N(answer.LooseDensityKgPerM3, 1)} ({answer.DensityFrom})");
            table.Add("surface", answer.ReposeFrom);
            table.Add("pack factor", $"{N(answer.PackFactor, 3)} ({answer.PackFactorFrom})");
            table.Add("stock, t", N(answer.Tonnes, 1) + (answer.StandardUncertaintyTonnes is { } u ? $" ± {N(2 * u, 1)}" : ""));
            foreach (var part in answer.Parts)
            {
                table.Add($"  of the ±: {part.What}, t", N(2 * part.StandardUncertaintyTonnes, 1));
            }

            if (answer.AgainstTheLedger is { } check)
            {
                table.Add("reckoned, t", N(check.ReckonedTonnes, 1));
                table.Add("difference, t", $"{N(check.DifferenceTonnes, 1)} ± {N(check.PlusMinusTonnes, 1)}");
            }

            table.To(voice);
            voice.Say(answer.AgainstTheLedger?.Verdict ?? "Reckoned; ± is k = 2.");
        }
    }

    public static Command Calibrate(Voice voice)
    {
        var command = new Command("calibrate", "The pack factor of a posed bin from weighing it out, with ±. Needs no records.");
        return PosedVerb.Of<WeighOutCase, WeighOutAnswer>(command, voice, WeighOutCase.Help, WeighOutCase.Read, WeighOutAnswer.To, Say);

        void Say(WeighOutAnswer answer)
        {
            var table = new TextTable("weigh-out", "factor", "±", "weight");
            foreach (var each in answer.Each)
            {
                table.Add(each.Code, N(each.Factor, 4), N(2 * each.StandardUncertainty, 4), N(each.Weight, 3));
            }

            table.Add("together", N(answer.PackFactor, 4), N(2 * answer.StandardUncertainty, 4), "");
            table.To(voice);
            voice.Say(answer.IsWidened ? "The weigh-outs scatter more than their ± allow; the ± was widened to match." : "± is k = 2.");
        }
    }

    public static Command Best(Voice voice)
    {
        var command = new Command("best", "Which posed bin is best for a posed load: chance of its band, purity, money of diluting, room; and why the others cannot take it. Needs no records.");
        return PosedVerb.Of<BestBinCase, BestBinAnswer>(command, voice, BestBinCase.Help, BestBinCase.Read, BestBinAnswer.To, Say);

        void Say(BestBinAnswer answer)
        {
            var table = new TextTable("rank", "bin", "chance %", "purity %", "with it %", "protein %", "with it %", "money", "room t", "why");
            foreach (var bin in answer.Ranked)
            {
                var money = bin.MoneyPerTonneOfLoad is { } per ? $"{M(per, 2)} {bin.MoneyUnit}{(bin.MoneyStandardUncertainty is { } u ? $" ± {M(2 * u, 2)}" : "")}" : "";
                table.Add(
                    bin.Rank.ToString(CultureInfo.InvariantCulture), bin.Bin, M(bin.ChanceOfBandPercent, 0), M(bin.PurityPercent, 1), M(bin.PurityWithLoadPercent, 1), M(bin.ProteinPercent, 2), M(bin.ProteinWithLoadPercent, 2),
                    money, M(bin.RoomLeftTonnes, 1), bin.Why + (bin.CarryOver.Length > 0 ? $" {bin.CarryOver}" : ""));
            }

            table.To(voice);
            foreach (var bin in answer.NotPossible)
            {
                voice.Say($"not {bin.Bin}: {string.Join("; ", bin.Reasons)}");
            }

            voice.Say(answer.Note);
        }
    }

    private static string M(decimal? number, int decimals) => number?.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) ?? "";

    private static string N(double number, int decimals) => number.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
