using Evengrist.Laboratory;
using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Samples;

/// <summary>What is refused and what is asked: the rules are this program's own; what cannot be is the ledger's.</summary>
public sealed class ResultModelTests
{
    private static readonly LabInstrument Nir = new("NIR-2", ["NIR"], 24, [new(Property.Protein, 0.2m, FigureMark.Ours, "test")], []);
    private static readonly Instant Taken = Instant.FromUtc(2025, 9, 15, 12, 0);

    [Fact]
    public void Against_ASoundResult_IsNothing() => Assert.Empty(Against(Protein(11.9m), InstrumentState.InCheck));

    [Theory]
    [InlineData("", "NIR-2", "14mb", 11.9, "say by which method")]
    [InlineData("guess", "NIR-2", "14mb", 11.9, "no method \"guess\"")]
    [InlineData("NIR", "NIR-2", "", 11.9, "moisture basis")]
    [InlineData("NIR", "NIR-2", "14mb", -1, "cannot be")]
    [InlineData("NIR", "NIR-2", "14mb", 119, "cannot be")]
    [InlineData("NIR", "", "14mb", 11.9, "on which instrument")]
    [InlineData("NIR", "NIR-7", "14mb", 11.9, "no instrument \"NIR-7\"")]
    [InlineData("combustion", "NIR-2", "14mb", 11.9, "does not serve combustion")]
    public void Against_WhatCannotBeTaken_IsRefused(string method, string instrument, string basis, double value, string says)
    {
        var read = Basis.TryParse(basis, out var stated) ? stated : default;
        var objection = Assert.Single(Against(new ResultEntry(Property.Protein, method, instrument, [(decimal)value], "%", read), InstrumentState.InCheck), o => o.Words.Contains(says, StringComparison.Ordinal));
        Assert.False(objection.IsQuestion);
    }

    [Fact]
    public void Against_DateBeforeTheSampleOrNoValue_IsRefused()
    {
        Assert.Contains("before the sample", Assert.Single(Model(InstrumentState.InCheck).Against(Protein(11.9m), Taken, Taken - Duration.FromMinutes(1), [])).Words, StringComparison.Ordinal);
        Assert.Contains("no value", Assert.Single(Against(Protein(), InstrumentState.InCheck)).Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(InstrumentState.Out, "out of check")]
    [InlineData(InstrumentState.Overdue, "overdue for its check")]
    public void Against_InstrumentNotInCheck_IsAsked(InstrumentState state, string says)
    {
        var asked = Assert.Single(Against(Protein(11.9m), state));
        Assert.True(asked.IsQuestion);
        Assert.Contains(says, asked.Words, StringComparison.Ordinal);
    }

    [Fact] // 12.7 on 12mb is 12.41 on 14mb, as x·(100 − 14)/(100 − 12); oddBeyond of the start table is 1.0.
    public void Against_UnlikeTheLastOnes_IsAskedOnTheSameBasis()
    {
        Reading[] last = [Read(12.7m, Basis.At12, 1), Read(12.7m, Basis.At12, 2), Read(3m, Basis.At12, 0)];
        Assert.Equal(12.4114m, Math.Round(ResultModel.Usual(last, Protein(1m))!.Value, 4));
        Assert.Empty(Against(Protein(13.4m), InstrumentState.InCheck, last));
        var odd = Assert.Single(Against(Protein(13.5m, 12.4m), InstrumentState.InCheck, last));
        Assert.True(odd.IsQuestion);
        Assert.Contains("13.5 % is unlike the last ones here, about 12.411 %", odd.Words, StringComparison.Ordinal);
        Assert.Null(ResultModel.Usual([], Protein(1m)));
    }

    private static IReadOnlyList<Objection> Against(ResultEntry entry, InstrumentState state, params Reading[] last) => Model(state).Against(entry, Taken, Taken + Duration.FromHours(1), last);

    private static ResultModel Model(InstrumentState state) => new(LabMethods.Start, [new(Nir, state, "Why.", null, null)]);

    private static ResultEntry Protein(params decimal[] values) => new(Property.Protein, "NIR", "NIR-2", values, "%", Basis.At14);

    private static Reading Read(decimal value, Basis basis, int hour) => new(new FactId(9), new PlaceId(1), Taken - Duration.FromHours(9 - hour), Property.Protein, value, "%", basis, "NIR");
}
