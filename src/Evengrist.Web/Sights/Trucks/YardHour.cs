namespace Evengrist.Web.Sights.Trucks;

/// <summary>One hour of the milling day at the gate.</summary>
/// <param name="Begins">Mill time, <c>14:00</c>.</param>
/// <param name="Booked">Slots booked for it.</param>
/// <param name="Came">Trucks that came in it up to the moment looked at.</param>
/// <param name="Expected">Booked slots of it whose truck has not come.</param>
public sealed record YardHour(string Begins, int Booked, int Came, int Expected);
