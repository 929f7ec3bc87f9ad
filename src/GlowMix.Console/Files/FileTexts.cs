using System.Security;

namespace GlowMix.Console.Files;

/// <summary>The words of what keeps a file from being written.</summary>
internal static class FileTexts
{
    /// <summary>Nothing, or a folder's name, where a file's is needed.</summary>
    public const string NameMissing = "needed: the name of a file";

    /// <summary>A file of this name is there, and is to be kept.</summary>
    public const string IsThere = "is there already";

    /// <summary>Where the file should go there is a folder.</summary>
    public const string IsFolder = "this is a folder; needed: a file";

    /// <summary>Where the folder should be there is a file.</summary>
    public const string FolderIsFile = "cannot be written: this is a file; needed: a folder";

    /// <summary>A pipe, a terminal, a disk.</summary>
    public const string IsNoFile = "this is a device or a pipe; needed: a file";

    /// <summary>The file itself says that it is not to be written.</summary>
    public const string IsReadOnly = "the file is for reading only";

    /// <summary>A link that leads to itself, however far about.</summary>
    public const string LinksInCircle = "its symbolic links lead in a circle";

    /// <summary>Somebody else wrote the file in the meantime.</summary>
    public const string ChangedSinceRead = "has changed since it was read; kept as it is now";

    private const int NoSpaceLeft = 28;
    private const int QuotaExceeded = 122;
    private const int ReadOnlyFileSystem = 30;
    private const int WindowsDiskFull = unchecked((int)0x80070070);

    /// <summary>Why a file cannot be written.</summary>
    /// <param name="name">Which of several, or an empty text.</param>
    /// <param name="reason">What the system says.</param>
    public static string CannotBeWritten(string name, Exception reason) =>
        reason.Message == IsThere
            ? reason.Message
            : $"{(name.Length > 0 ? $"{name} " : "")}cannot be written: {ReasonOf(reason)}";

    // The system's words name a passing file that the user has never seen.
    private static string ReasonOf(Exception e) =>
        e switch
        {
            UnauthorizedAccessException or SecurityException => "no permission",
            DirectoryNotFoundException => "there is no such folder",
            PathTooLongException => "the name is too long",
            { HResult: NoSpaceLeft or QuotaExceeded or WindowsDiskFull } => "the disk is full",
            { HResult: ReadOnlyFileSystem } => "the disk is for reading only",
            _ => e.Message.Split(" : '")[0],
        };
}
