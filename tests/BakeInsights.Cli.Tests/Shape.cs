using System.Text.Json;
using System.Text.Json.Nodes;
using Xunit;

namespace BakeInsights.Cli.Tests;

/// <summary>Holds a JSON document against a contract: which keys, in which order, with values of which kind.</summary>
internal static class Shape
{
    public static void Is(JsonNode? node, params (string Key, JsonValueKind Kind)[] members)
    {
        var found = Assert.IsType<JsonObject>(node);
        Assert.Equal(members.Select(member => member.Key), found.Select(member => member.Key));
        Assert.All(members, member => Assert.Equal((member.Key, member.Kind), (member.Key, KindOf(found[member.Key]))));
    }

    public static void Is(JsonNode? node, string key, JsonValueKind kind) => Is(node, (key, kind));

    public static void IsJournal(JsonNode? journal)
    {
        Is(
            journal,
            ("rows", JsonValueKind.Number),
            ("bakes", JsonValueKind.Number),
            ("set_aside", JsonValueKind.Number),
            ("notice_counts", JsonValueKind.Object),
            ("notices", JsonValueKind.Array));
        Assert.All(journal!["notices"]!.AsArray(), notice => Is(
            notice,
            ("file", JsonValueKind.String),
            ("line", JsonValueKind.Number),
            ("column", JsonValueKind.String),
            ("code", JsonValueKind.String),
            ("gravity", JsonValueKind.String),
            ("text", JsonValueKind.String),
            ("message", JsonValueKind.String),
            ("remedy", JsonValueKind.String)));
    }

    private static JsonValueKind KindOf(JsonNode? node) => node?.GetValueKind() ?? JsonValueKind.Null;
}
