namespace Evengrist.Intake.Trade;

/// <summary>A standing arrangement of the scale house that is kept by code and version: a party, a field, a vehicle, a certificate.</summary>
public interface ITradePaper
{
    /// <summary>What people call it; the code it is kept under.</summary>
    string Code { get; }

    /// <summary>What is wrong and what to do, each a sentence; empty where nothing is.</summary>
    IReadOnlyList<string> Faults();
}
