using System.Text.Json;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

public sealed class MixCaseTests
{
    [Fact]
    public void Solve_SampleCase_IsTheDaysMix()
    {
        // docs/model/mix.md: values invented, the answer reckoned apart from this program.
        var (status, output, error) = Shell.Run("mix", "solve", "--in", Repository.Sample("cases", "mix.json"), "--json");
        Assert.Equal((0, ""), (status, error));
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.Equal(245.00, answer.GetProperty("costToday").GetDouble(), 0.01);
        Assert.Equal(247.28, answer.GetProperty("habit").GetProperty("costToday").GetDouble(), 0.01);
        Assert.Equal(["B05", "B07", "B11"], answer.GetProperty("gates").EnumerateArray().Select(g => g.GetProperty("bin").GetString()));
        Assert.Equal(2, answer.GetProperty("savings").GetArrayLength());
    }

    [Theory]
    [InlineData("\"least\": 13.2", "\"least\": 14.7", 3, "cannot be kept together")]
    [InlineData("\"least\": 13.2", "\"least\": 13.2, \"most\": 13", 2, "cross")]
    [InlineData("\"what\": \"protein\"", "\"what\": \"protien\"", 2, "the nearest to protien is protein")]
    [InlineData("\"what\": \"protein\"", "\"what\": \"temperature\"", 2, "no rule")]
    [InlineData("\"rate\": 17.5", "\"rate\": -17.5", 2, "$.rate")]
    [InlineData("\"testWeight\": 77.1", "\"testWeight\": \"77.1\"", 2, "$.bins[2].values.testWeight")]
    [InlineData("\"B02\": 56", "\"B02\": 46", 2, "90 %")]
    [InlineData("\"code\": \"B05\"", "\"code\": \"B02\"", 2, "offer each bin once")]
    public void Solve_WhatCannotBe_SaysWhatToDo(string was, string becomes, int status, string says)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "mix.json"));
        Assert.Contains(was, text, StringComparison.Ordinal);
        var (exit, output, error) = Shell.Run("mix", "solve", "--in", folder.File("case.json", text.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((status, ""), (exit, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_ExampleOfTheHelp_IsAnswered()
    {
        using var folder = new Folder();
        Assert.Equal(0, Shell.Run("mix", "solve", "--in", folder.File("case.json", Evengrist.Plant.Cases.MixCase.Help.Example)).Status);
    }
}
