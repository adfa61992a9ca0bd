using System.CommandLine;
using System.Globalization;
using Evengrist.Bins.Storage;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Cli.Rooms;

/// <summary>Stored wheat: equilibrium moisture, storage risk, aeration. Posed cases; needs no records.</summary>
internal static class StorageVerbs
{
    public static Command Equilibrium(Voice voice)
    {
        var command = new Command("equilibrium", "Moisture of wheat and humidity of the air round it, each from the other, with the mark of the constants. Needs no records.");
        return PosedVerb.Of<EquilibriumCase, EquilibriumAnswer>(command, voice, EquilibriumCase.Help, EquilibriumCase.Read, EquilibriumAnswer.To, answer => Say(answer, voice));
    }

    public static Command Storage(Voice voice)
    {
        var command = new Command("storage", "Life used, humidity, insects' band and reasons to look, for the layers of a posed bin. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, StorageCase.Help);
        command.SetAction(asked => voice.Answer(
            posed.Json(asked), posed.Ask(asked, StorageCase.Read, c => Parsing.Got(BinRiskAnswer.Of(BinRisk.Of(c.Bin, c.Constants, c.At)))), a => Say(a, voice)));
        return command;
    }

    public static Command Aeration(Voice voice)
    {
        var command = new Command("aeration", "Hours for a cooling front, what posed airs would do to the grain, and the pressure. Starts no fan; needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, AerationCase.Help);
        command.SetAction(asked => voice.Answer(posed.Json(asked), posed.Ask(asked, AerationCase.Read, AerationAnswer.To), a => Say(a, voice)));
        return command;
    }

    private static void Say(EquilibriumAnswer answer, Voice voice)
    {
        voice.Say($"{answer.Wheat} wheat at {N(answer.Celsius, 1)} °C");
        var table = new TextTable("equation", "moisture %", "% of dry matter", "humidity %", "constants");
        foreach (var line in answer.Answers)
        {
            table.Add(line.Equation, N(line.MoisturePercent, 2), N(line.PercentOfDryMatter, 2), N(line.HumidityPercent, 1), line.Constants);
        }

        table.To(voice);
        foreach (var note in answer.Answers.SelectMany(a => a.Notes.Select(n => $"{a.Equation}: {n}")).Concat(answer.Refused))
        {
            voice.Say(note);
        }
    }

    private static void Say(BinRiskAnswer answer, Voice voice)
    {
        foreach (var reason in answer.Reasons)
        {
            voice.Say($"{reason.Level}: {reason.Words}");
            voice.Say($"    rule: {reason.Rule}");
        }

        var table = new TextTable("layer", "t", "moisture %", "°C now", "keeps d", "to plan by d", "measured d", "life used", "humidity %", "insects");
        foreach (var l in answer.LayersBottomFirst.Reverse())
        {
            table.Add(l.Name, N(l.Tonnes, 1), N(l.MoisturePercent, 1), N(l.Celsius, 1), N(l.DaysByEquation, 1), N(l.AlarmDays, 1), l.DaysMeasuredAtLeast is { } least ? $"more than {N(least, 0)}" : N(l.DaysMeasured, 1),
                (l.LifeUsedIsAtMost ? "at most " : l.DaysBeyondEquation > 0 ? "more than " : "") + N(l.LifeUsed, 2), N(l.HumidityPercent, 0), l.InsectBand);
        }

        table.To(voice);
        foreach (var line in answer.LayersBottomFirst.SelectMany(l => new[] { l.Assumed, l.Equation }).Where(l => l.Length > 0).Distinct().Concat(answer.Cautions).Append(answer.Advice))
        {
            voice.Say(line);
        }
    }

    private static void Say(AerationAnswer answer, Voice voice)
    {
        voice.Say($"Front by the rule of thumb: {N(answer.RuleHours, 0)} h, {N(answer.RuleDays, 1)} days at the fan hours given ({answer.Rule})");
        voice.Say($"By warmth alone at most {N(answer.HoursByWarmthAlone, 0)} h; by the heat balance as below ({answer.HeatBalance})");
        var table = new TextTable("air °C", "humidity %", "effective °C", "cools", "front h", "water kg/t", "would bring %", "it");
        foreach (var air in answer.Airs)
        {
            table.Add(N(air.Celsius, 1), N(air.HumidityPercent, 0), N(air.EffectiveCelsius, 1), air.Cools ? "yes" : air.CoolerByDryBulb ? "no, whatever its dry bulb says" : "no", N(air.FrontHours, 0), N(air.WaterKilogramsPerTonne, 1), N(air.WouldBringMoisturePercent, 1), air.Water);
        }

        table.To(voice);
        voice.Say($"Airs cooler by the dry bulb: {answer.HoursCoolerByDryBulb}; that cool by the effective temperature: {answer.HoursThatCool}");
        voice.Say(answer.PascalsLoose is null ? $"Pressure: {answer.Pressure}" : $"Pressure: {N(answer.PascalsLoose, 0)} Pa loose, {N(answer.PascalsPacked, 0)} Pa packed ({answer.Pressure})");
        voice.Say($"Constants: {answer.Constants}");
        foreach (var caution in answer.Cautions)
        {
            voice.Say(caution);
        }
    }

    private static string N(double? number, int decimals) => number?.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) ?? "not known";
}
