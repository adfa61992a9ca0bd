using System.Globalization;
using Evengrist.Intake.Paying;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Web.Sights.Paying;

/// <summary>What a person does about the payment of a ticket: an advance, the settlement, or voiding it.</summary>
public sealed class PayForm
{
    /// <summary><c>part</c>, <c>tonne</c>, <c>settle</c> or <c>void</c>.</summary>
    public string? What { get; set; }

    /// <summary>Per cent of the provisional pay, or money for a tonne.</summary>
    public string? Value { get; set; }

    /// <summary>Why the ticket is voided.</summary>
    public string? Why { get; set; }

    /// <summary>Does it.</summary>
    /// <returns>What is wrong with the form; null where it was recorded.</returns>
    /// <exception cref="Ledger.LedgerRefusal">It may not be done as things stand.</exception>
    public string? Do(Mill mill, PaymentAccount account, string by, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(account);
        var ticket = account.Load.Truck.Code;
        switch (What)
        {
            case "settle":
                new PayTickets([ticket], null, at).In(mill, by);
                return null;
            case "void":
                new VoidTicket(ticket, Why ?? "", at).In(mill, by);
                return null;
            case "part" or "tonne" when !decimal.TryParse((Value ?? "").Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _):
                return $"An advance needs a number, per cent or money for a tonne; read “{Value}”. Write it like 70 or 165.50.";
            case "part" or "tonne":
                var value = decimal.Parse(Value!.Trim(), CultureInfo.InvariantCulture);
                var currency = account.Load.Terms?.Base.Money.Currency ?? mill.Settings.Currency;
                new PayTickets([ticket], What == "part" ? new PercentOfPay(value) : new FixedPerTonne(Money.Of(value, currency)), at).In(mill, by);
                return null;
            default:
                return "Choose what is to be done.";
        }
    }
}
