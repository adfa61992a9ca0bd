using Evengrist.Laboratory;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Laboratory;

public sealed class FlourAshLimitTests
{
    // 21 CFR 137.105: ash ≤ protein/20 + 0.35 on dry matter; the cases are derived from it. The last two lie one step either side of the limit.
    [Theory]
    [InlineData("11.0", "0.50", "12.791", "0.5814", "0.9895", true)]
    [InlineData("12.5", "0.88", "14.535", "1.0233", "1.0767", true)]
    [InlineData("12.5", "0.92", "14.535", "1.0698", "1.0767", true)]
    [InlineData("12.5", "0.93", "14.535", "1.0814", "1.0767", false)]
    public void IsMet_FlourAt14_FollowsTheIdentityStandard(string protein, string ash, string proteinDry, string ashDry, string limit, bool met)
    {
        var (p, a) = (SolidsShare.Percent(Num.Of(protein), Basis.At14), SolidsShare.Percent(Num.Of(ash), Basis.At14));
        Num.Near(Num.Of(proteinDry), p.DryValue, 0.0005m);
        Num.Near(Num.Of(ashDry), a.DryValue, 0.00005m);
        Num.Near(Num.Of(limit), FlourAshLimit.For(p).Value, 0.00005m);
        Assert.Equal(met, FlourAshLimit.IsMet(p, a));
    }
}
