using Evengrist.Quantities;
using NetArchTest.Rules;

namespace Evengrist.Tests.Architecture;

public sealed class RoomTests
{
    private static readonly System.Reflection.Assembly Domain = typeof(Mass).Assembly;

    private static readonly IReadOnlyList<string> Standing = Domain.GetTypes()
        .Select(t => t.Namespace ?? "")
        .Where(n => n.StartsWith("Evengrist", StringComparison.Ordinal))
        .Select(n => n.Split('.').ElementAtOrDefault(1) ?? "")
        .Distinct()
        .ToList();

    public static TheoryData<string> Rooms_() => new(Standing);

    [Theory]
    [MemberData(nameof(Rooms_))]
    public void Room_Standing_UsesOnlyWhatTheTableAllows(string room)
    {
        Assert.True(Rooms.MayUse.ContainsKey(room), $"\"{room}\" is not in the table of rooms: a folder of src/Evengrist is a room.");
        var forbidden = Rooms.MayUse.Keys.Where(r => r != room && !Rooms.MayUse[room].Contains(r)).Select(r => "Evengrist." + r).ToArray();
        var result = Types.InAssembly(Domain).That().ResideInNamespace("Evengrist." + room).ShouldNot().HaveDependencyOnAny(forbidden).GetResult();
        Assert.True(result.IsSuccessful, $"{room} may not use {string.Join(", ", forbidden)}, but these do: {string.Join(", ", result.FailingTypeNames ?? [])}");
    }

    [Fact]
    public void Table_Rooms_HasNoCircle()
    {
        foreach (var (room, uses) in Rooms.MayUse)
        {
            Assert.All(uses, used => Assert.False(Rooms.MayUse[used].Contains(room), $"{room} and {used} use each other."));
        }
    }

    [Fact]
    public void Namespace_EveryFile_IsItsFolder()
    {
        foreach (var file in Repository.Sources("src/Evengrist", ".cs"))
        {
            var expected = "namespace " + Path.GetDirectoryName(file)!["src/".Length..].Replace('/', '.').Replace('\\', '.') + ";";
            Assert.True(Repository.Text(file).Contains(expected, StringComparison.Ordinal), $"{file}: expected {expected}");
        }
    }
}
