using Evengrist.Intake;

namespace Evengrist.Records.Intake;

/// <summary>Keeps a version of a contract.</summary>
public static class KeepContract
{
    /// <summary>Keeps it; the same once more changes nothing.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="terms">The terms in their version.</param>
    /// <param name="by">Who agreed them.</param>
    /// <exception cref="ArgumentException">They have <see cref="ContractTerms.Faults"/>, or nobody is named.</exception>
    /// <exception cref="Evengrist.Ledger.LedgerRefusal">The version is kept already and says something else.</exception>
    public static void Keep(this Mill mill, ContractTerms terms, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(terms);
        if (terms.Faults() is [var fault, ..])
        {
            throw new ArgumentException(fault, nameof(terms));
        }

        mill.Contracts.Keep(terms.Code, terms.Version, TermsJson.Write(terms), by);
    }
}
