namespace BakeInsights;

/// <summary>What a plan can't tell apart.</summary>
internal static class ClassConfounding
{
    /// <summary>One sentence each.</summary>
    public static IEnumerable<string> Of(ClassPlanWish wish, int rounds)
    {
        var names = wish.Factors.Select(factor => factor.Name).ToList();
        if (wish.IsHalf)
        {
            foreach (var sentence in OfHalf(names))
            {
                yield return sentence;
            }
        }

        if (wish.SetForAll is { } name)
        {
            yield return $"{Capital(name)} is the same for all benches in a round, so it is compared from round to round, {rounds} in all: whatever else "
                + "differs between rounds, the day, the room, the flour bag, can't be told from it. The chance given for it supposes that nothing does.";
        }

        if (wish.Benches.Count > 1)
        {
            yield return "A bench's own way is set aside, not measured: that one bench works differently with one level than another does is not looked for.";
        }
    }

    // In the half with product 1, each set of factors goes with the set of all others: Box and Hunter 1961.
    private static IEnumerable<string> OfHalf(List<string> names)
    {
        if (names.Count == 3)
        {
            foreach (var name in names)
            {
                var others = names.Where(other => other != name).ToList();
                yield return $"What {name} does can't be told from what {others[0]} and {others[1]} do together beyond what each does by itself.";
            }
        }
        else if (names.Count == 4)
        {
            foreach (var other in names.Skip(1))
            {
                var rest = names.Skip(1).Where(each => each != other).ToList();
                yield return $"What {names[0]} and {other} do together can't be told from what {rest[0]} and {rest[1]} do together.";
            }

            yield return "What one does by itself can be told from what any two do together, but not from what the other three do together.";
        }
        else
        {
            yield return $"What one or two do can be told apart, but what {(names.Count == 5 ? "two do together not from what the other three do" : "more do together not from what the others do")} together.";
        }
    }

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
