# Why something was refused or not believed, by kind, in words of our own: what the system and the
# readers of files say themselves is English or another language, and stands in the log file alone.

# It stands in brackets inside other sentences. $why: no-room, not-allowed, not-found, in-use,
# read-only, is-there, not-a-folder, not-a-file, bad-name, broken, no-answer, damaged, newer, other.
# Example: (no room is left on the disk)
reason = { $why ->
        [no-room] no room is left on the disk
        [not-allowed] you may not do that there
        [not-found] it is not there
        [in-use] another program is using it
        [read-only] the disk can be read but not written to
        [is-there] something of that name is there already
        [not-a-folder] a file stands in the way where a folder should be
        [not-a-file] a folder stands there where a file should be
        [bad-name] no file can have such a name
        [broken] the disk or the connection to it is broken
        [no-answer] there was no answer in time
        [damaged] it is damaged
        [newer] a newer Marlinspeak wrote it
       *[other] the system refuses; the log file says more
    }

# What is wrong with a document. $fault: too-large, not-a-file, not-json, newer, checksum or shape. $place: line, field or
# version, as below, or nothing.
# Example: (line 3, column 7 is not JSON)
fault = { $fault ->
        [too-large] it is too large
        [not-a-file] it is not a plain file
        [not-json] { $place } is not JSON
        [newer] { $place } is newer than this program
        [checksum] its contents do not have its checksum
       *[shape] { $place ->
            [none] it is not what it should be
           *[known] { $place } is not what it should be
        }
    }

# Where in a document the fault is. $place: line, field or version. $name: its number or name; $column: the column, as text.
fault-place = { $place ->
        [line] line { $name }, column { $column }
        [field] the field “{ $name }”
       *[version] version { $name }
    }
