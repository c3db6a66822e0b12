namespace BakeInsights;

/// <summary>Puts a bake into its journal, whole or not at all.</summary>
public static class BakeAppender
{
    private const string Untouched = "The journal is as it was.";

    /// <summary>
    /// Adds the bake's line to the end of the journal's last file, in that file's separator, line ends and encoding.
    /// The bytes before it stay as they are. Two writers wait for each other.
    /// </summary>
    /// <param name="entry">The bake.</param>
    /// <param name="stop">Stops the waiting for another writer.</param>
    /// <returns>The bake as the reader finds it in the journal.</returns>
    /// <exception cref="JournalFileException">The bake was not added; the journal is as it was.</exception>
    public static Bake Append(BakeEntry entry, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var file = entry.Form.File;
        try
        {
            // A link to the file is to stay one, so what it leads to is what is replaced.
            var target = File.ResolveLinkTarget(file, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(file);
            RequireWritable(file, target);
            using var hold = JournalLock.Take(target, stop);
            return AppendAlone(entry, target);
        }
        catch (UnauthorizedAccessException failure)
        {
            throw new JournalFileException(
                file, "The bake can't be added: the file or its folder may not be written.", "Get the right to write there. " + Untouched, failure);
        }
        catch (IOException failure) when (failure is not JournalFileException)
        {
            throw new JournalFileException(
                file, $"The bake could not be added ({failure.Message.TrimEnd('.')}).", "See that the disk has room and is there. " + Untouched, failure);
        }
    }

    // Others may have written since the form was opened, so the journal is read again.
    private static Bake AppendAlone(BakeEntry entry, string target)
    {
        var form = BakeForm.Open(entry.Form.Path);
        if (form.File != entry.Form.File || !form.Header.SequenceEqual(entry.Form.Header))
        {
            throw new JournalFileException(
                form.File, "The journal's columns changed while the bake was being filled in.", "Start again. " + Untouched);
        }

        if (entry.Id.Length > 0 && form.HolderOf(entry.Id) is { } holder)
        {
            throw new JournalFileException(
                form.File,
                FormattableString.Invariant($"The bake_id {entry.Id} is already that of {holder.File}, line {holder.Line}."),
                "Give another, or none. " + Untouched);
        }

        using var copy = new AppendedFile(target, entry.LineFor(form, form.NextId));
        var bake = ReadBack(form, copy.Copy);
        copy.TakePlace();
        return bake;
    }

    // The reader itself says whether the new file holds all that the old one held, and the bake.
    private static Bake ReadBack(BakeForm form, string copy)
    {
        var after = BakesSoFar.Read(form.Path, [.. form.Files.SkipLast(1), copy]);
        var before = form.SoFar.Reading;
        return after.Reading.Bakes == before.Bakes + 1 && after.Reading.Rows == before.Rows + 1
            ? after.Last!
            : throw new JournalFileException(
                form.File, "With this line the journal would no longer be read as before.", "Check the bake's day and numbers. " + Untouched);
    }

    private static void RequireWritable(string file, string target)
    {
        if (File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
        {
            throw new JournalFileException(
                file, "The bake can't be added: the file is marked as not to be written.", "Allow writing to it, or add to another journal. " + Untouched);
        }
    }
}
