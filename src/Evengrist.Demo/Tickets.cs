using System.Globalization;
using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The scale house: writes the tickets of trucks, with what the scale and the laboratory read on them.</summary>
internal sealed class Tickets(Dice dice, GradeBench grades, Truth truth, Dice gate)
{
    // On these days the gate wrote down who came when, and slots were booked: the fullest harvest day, and the day the demonstration opens at.
    private static readonly LocalDate[] Watched = [new(2025, 7, 9), new(2026, 1, 14)];
    private readonly List<Booking> bookings = [];
    private LocalDate today;
    private int number;
    private int pit;

    /// <summary>Slots booked for the trucks written so far.</summary>
    public IReadOnlyList<Booking> Bookings => bookings;

    /// <summary>Ticket number the next truck of a day gets.</summary>
    public string Next(LocalDate day) => string.Create(CultureInfo.InvariantCulture, $"{day.Year % 100:00}-{day.Month:00}{day.Day:00}-{(day == today ? number : 0) + 1:000}");

    /// <summary>A truck whose net, as weighed, is given in kilograms; the true one differs by the scale's error.</summary>
    public Ticket Write(Desk desk, string source, string wheat, string haulier, District district, int net, LocalDate day, Instant at, string bin, double protein, bool full)
    {
        var code = Next(day);
        (today, number) = (day, int.Parse(code.AsSpan(8), CultureInfo.InvariantCulture));
        var real = new TruckTruth(net + dice.Normal(0, 12), protein, dice.Normal(district.Moisture, district.MoistureSd, 8, 17),
            dice.Normal(district.TestWeight, district.TestWeightSd, 70, 84), dice.Normal(district.Falling, district.FallingSd, 80, 450),
            Math.Max(0.02, district.Don * (1 + dice.Normal(0, district.Don > 0.5 ? 0.8 : 0.4))), Math.Max(0.1, dice.Normal(0.6, 0.35)));
        truth.Add(code, real);
        var tare = 20 * dice.Whole(580, 640);
        desk.Open(code, PlaceKind.Truck, $"trailer {dice.Whole(10, 58)}", wheat, haulier);
        Gate(desk, source, wheat, code, day, at);
        var gross = Weigh(desk, code, at, Property.GrossWeight, net + tare);
        if (full)
        {
            SamplingDesk.Write(desk, code, number, day, at + Duration.FromMinutes(3));
        }

        var read = Probe(desk, code, at + Duration.FromMinutes(4), real, district, full);
        var tipped = at + Duration.FromMinutes(9);
        pit = 1 - pit;
        var moves = new[]
        {
            desk.Move(source, code, net * 1000L, at - Duration.FromMinutes(35)),
            desk.Move(code, Plant.Pits[pit], net * 1000L, tipped),
            desk.Move(Plant.Pits[pit], $"LEG{pit + 1}", net * 1000L, tipped),
            desk.Move($"LEG{pit + 1}", bin, net * 1000L, tipped),
        };
        Weigh(desk, code, at + Duration.FromMinutes(14), Property.TareWeight, tare);
        return new Ticket(code, net, gross, moves, read.Protein, read.Moisture);
    }

    // Seven in ten have a slot, on the ten minutes; how long each waits at the gate is invented.
    private void Gate(Desk desk, string source, string wheat, string code, LocalDate day, Instant at)
    {
        if (!Watched.Contains(day))
        {
            return;
        }

        var booked = gate.Chance(0.7) ? $"S-{code.Remove(2, 1)}" : "";
        var came = at - Duration.FromSeconds((long)(60 * gate.Normal(5, 3, 1, 16)));
        desk.Happened(code, came, HappeningKind.Arrived, Happening.TextOf($"from {source}{(booked.Length > 0 ? $", booked as {booked}" : "")}", new Arrival("gate", code, source, booked).ToJson()));
        if (booked.Length > 0)
        {
            var slot = came + Duration.FromMinutes((long)gate.Normal(0, 8, -20, 20));
            bookings.Add(new Booking(booked, Instant.FromUnixTimeSeconds(slot.ToUnixTimeSeconds() / 600 * 600), source, wheat, 26m));
        }
    }

    private static Measure Weigh(Desk desk, string code, Instant at, Property what, int kilograms) =>
        desk.Read(code, at, what, kilograms, "kg", default, "truck scale", "scale 1", 10m);

    // Instrument errors: NIR wheat protein 0.20, moisture 0.15 (mid of the quoted ranges); probe sampling adds to both.
    private (double Protein, double Moisture) Probe(Desk desk, string code, Instant at, TruckTruth real, District district, bool full)
    {
        var protein = Math.Round((decimal)(real.Protein + dice.Normal(0, 0.25)), 2);
        var moisture = Math.Round((decimal)(real.Moisture + dice.Normal(0, 0.18)), 1);
        desk.Read(code, at, Property.Moisture, moisture, "%", default, "NIR", "NIR-1", 0.18m);
        desk.Read(code, at, Property.Protein, protein, "%", Basis.At12, "NIR", "NIR-1", 0.25m);
        desk.Read(code, at, Property.TestWeight, Math.Round((decimal)(real.TestWeight + dice.Normal(0, 0.3)), 1), "kg/hL", default, "test weight, fixed volume", "TW-1", 0.3m);
        if (full)
        {
            desk.Happened(code, at, HappeningKind.Contract, $"{HouseContracts.CodeFor(district.Class)} 1");
            desk.Read(code, at, Property.Dockage, Math.Round((decimal)Math.Max(0, real.Dockage + dice.Normal(0, 0.1)), 1), "%", default, "dockage tester", "DK-1", 0.1m);
            Slow(desk, code, at + Duration.FromMinutes(6), real, district);
            grades.Read(desk, code, at + Duration.FromMinutes(4), real, district);
        }

        return ((double)protein, (double)moisture);
    }

    // Tests that take minutes are made on every rained-on truck and here and there elsewhere.
    private void Slow(Desk desk, string code, Instant at, TruckTruth real, District district)
    {
        var wet = district.Name == "Lowmere";
        if (wet || dice.Chance(0.2))
        {
            var falling = Math.Round((decimal)(real.FallingNumber * (1 + dice.Normal(0, 0.03))));
            desk.Read(code, at, Property.FallingNumber, Math.Max(62m, falling), "s", default, "falling number", "FN-1", Math.Round(falling * 0.03m, 1));
        }

        if (wet || dice.Chance(0.05))
        {
            // Variance of one 0.454 kg sample with one determination: 0.118 C^0.833 (J. AOAC Int. 83(5) 2000).
            var sd = Math.Sqrt(0.118 * Math.Exp(0.833 * Math.Log(real.Don)));
            desk.Read(code, at, Property.Don, Math.Round((decimal)Math.Max(0, real.Don + dice.Normal(0, sd)), 2), "mg/kg", Basis.At12, "strip test", "DON-1", Math.Round((decimal)sd, 2));
        }

        if (district.KernelWeight < 26 && dice.Chance(0.3))
        {
            desk.Read(code, at, Property.ThousandKernelWeight, Math.Round((decimal)dice.Normal(district.KernelWeight, 1.2), 1), "g", default, "counted kernels", "KC-1", 0.4m);
        }
    }
}

/// <summary>A ticket written: what later pages and corrections need of it.</summary>
internal sealed record Ticket(string Code, int Net, Measure Gross, IReadOnlyList<Move> Moves, double Protein, double Moisture);
