namespace Evengrist.Intake.Trade;

/// <summary>One item of a receipt record.</summary>
/// <param name="Rule">Where it is demanded: <c>21 CFR 1.337(a)(1)</c>.</param>
/// <param name="What">What it is.</param>
/// <param name="Text">What is recorded; empty where nothing is.</param>
/// <param name="Demanded">Whether the record is incomplete without it; fax and e-mail are kept if available.</param>
public sealed record ReceiptItem(string Rule, string What, string Text, bool Demanded = true)
{
    /// <summary>Whether it is demanded and not there.</summary>
    public bool IsMissing => Demanded && Text.Length == 0;
}
