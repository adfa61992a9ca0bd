using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Drafts that one person at one station recorded together.</summary>
/// <param name="By">Who.</param>
/// <param name="Source">The station.</param>
/// <param name="Recorded">When; nothing in it happened later.</param>
/// <param name="Drafts">In the order of recording.</param>
public sealed record DemoBatch(string By, string Source, Instant Recorded, IReadOnlyList<Draft> Drafts);
