using Evengrist.Intake.Paying;
using Evengrist.Intake.Trade;
using Evengrist.Quantities;
using Evengrist.Web.Face;
using NodaTime;

namespace Evengrist.Web.Sights.Paying;

/// <summary>How payments, groups of loads and certificates are shown and spoken of.</summary>
public static class PaidWords
{
    /// <summary>How far a load is paid for, as a state with its word.</summary>
    public static (StateKind Kind, string Word) Stage(PaymentStage stage) => stage switch
    {
        PaymentStage.Advanced => (StateKind.Watch, "advance paid"),
        PaymentStage.Settled => (StateKind.Clear, "settled"),
        PaymentStage.SettledOtherwise => (StateKind.Watch, "settled on other readings"),
        PaymentStage.Voided => (StateKind.Stop, "void"),
        _ => (StateKind.Watch, "nothing paid"),
    };

    /// <summary>How an instrument stands.</summary>
    public static (StateKind Kind, string Word) State(CertificateState state) => state switch
    {
        CertificateState.InForce => (StateKind.Clear, "in force"),
        CertificateState.EndsSoon => (StateKind.Watch, "ends soon"),
        CertificateState.NotYet => (StateKind.Stop, "begins later"),
        CertificateState.Expired => (StateKind.Stop, "expired"),
        _ => (StateKind.Stop, "no certificate"),
    };

    /// <summary>Days until nothing is in force, or since when nothing is.</summary>
    public static string Days(int? left) => left switch
    {
        null => "",
        0 => "today is its last day",
        1 => "1 day left",
        > 1 and var days => FormattableString.Invariant($"{days} days left"),
        -1 => "ended 1 day ago",
        var ago => FormattableString.Invariant($"ended {-ago} days ago"),
    };

    /// <summary>An amount with the decimals of its currency, without the currency; empty where there is none.</summary>
    public static string Amount(Money? money) => money is { } one ? one.ToString()[..^4] : "";

    /// <summary>What is left, with the word that says which way it goes.</summary>
    public static string Left(Money? left) => left switch
    {
        null => "not known",
        { Amount: 0m } => "nothing left",
        { Amount: < 0m } back => $"{-back} to get back",
        { } pay => $"{pay} to pay",
    };

    /// <summary>Money for a unit, cut to what one reads.</summary>
    public static string Each(Money? each, int decimals = 2) => each is { } one ? Shown.Digits(one.Amount, decimals) : "";

    /// <summary>Field, variety and class of a load.</summary>
    public static string Field(LoadFacts load) => Statement.FieldName(load);

    /// <summary>A milling day in words.</summary>
    public static string Say(LocalDate day) => day.ToString("d MMM uuuu", System.Globalization.CultureInfo.InvariantCulture);
}
