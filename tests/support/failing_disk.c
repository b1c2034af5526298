/* A disk that fails, for tests: loaded into a program before the C library, it lets one kind of
 * call fail, hang or take its time as long as a file is there.
 *
 * FAILING_CALL   open, write, fsync, rename, or any: then each of them, and every call that reads,
 *                looks, lists, makes, removes, links or locks; or changes: open, rename, and every
 *                call that makes, removes or links
 * FAILING_UNDER  only files below this folder
 * FAILING_WHILE  only while this file is there: with "hang" in it calls wait until it is gone, with
 *                "slowly" they take 60 ms longer, with "more slowly" 300 ms, with "usual"
 *                10 ms, with "read only" they fail as on such a disk, else as on a full one
 * FAILING_NOTES  a line is written to this file for each call from the first thread of the program
 */
#define _GNU_SOURCE
#include <dirent.h>
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <time.h>
#include <unistd.h>

#define REAL(name) __typeof__(&name) real = (__typeof__(&name))dlsym(RTLD_NEXT, #name)

/* Past the calls below, which would note themselves. */
static void note(const char *path) {
	const char *notes = getenv("FAILING_NOTES");
	if (!notes || syscall(SYS_gettid) != getpid()) return;
	int before = errno;
	int file = syscall(SYS_openat, AT_FDCWD, notes, O_WRONLY | O_APPEND | O_CREAT, 0600);
	char line[4097];
	int length = snprintf(line, sizeof line, "%s\n", path);
	if (file >= 0) {
		syscall(SYS_write, file, line, length < (int)sizeof line ? length : (int)sizeof line - 1);
		close(file);
	}
	errno = before;
}

static int is_under(const char *path) {
	const char *under = getenv("FAILING_UNDER");
	if (!under || !path || strncmp(path, under, strlen(under))) return 0;
	note(path);
	return 1;
}

static void wait_ms(long milliseconds) {
	struct timespec moment = {0, milliseconds * 1000000};
	nanosleep(&moment, NULL);
}

static int is_meant(const char *failing, const char *call) {
	if (!strcmp(failing, "changes")) {
		return !strcmp(call, "open") || !strcmp(call, "rename") || !strcmp(call, "change");
	}
	return !strcmp(failing, "any") || !strcmp(failing, call);
}

/* A call of no name, or that of a change, fails only where several do. */
static int fails(const char *call) {
	const char *failing = getenv("FAILING_CALL"), *flag = getenv("FAILING_WHILE");
	struct stat about;
	if (!failing || !flag || !is_meant(failing, call)) return 0;
	int before = errno;
	if (stat(flag, &about)) return errno = before, 0;
	if (about.st_size == 4) {
		/* Between two looks, not instead of one. */
		while (!stat(flag, &about)) wait_ms(5);
		return errno = before, 0;
	}
	if (about.st_size == 6) return wait_ms(60), errno = before, 0;
	if (about.st_size == 11) return wait_ms(300), errno = before, 0;
	if (about.st_size == 5) return wait_ms(10), errno = before, 0;
	errno = about.st_size == 9 ? EROFS : ENOSPC;
	return 1;
}

static int fails_at(int file, const char *call) {
	char link[64], path[4096];
	int before = errno;
	snprintf(link, sizeof link, "/proc/self/fd/%d", file);
	ssize_t length = readlink(link, path, sizeof path - 1);
	errno = before;
	if (length < 0) return 0;
	path[length] = 0;
	return is_under(path) && fails(call);
}

int fsync(int file) {
	REAL(fsync);
	return fails_at(file, "fsync") ? -1 : real(file);
}

ssize_t write(int file, const void *bytes, size_t count) {
	REAL(write);
	return fails_at(file, "write") ? -1 : real(file, bytes, count);
}

ssize_t read(int file, void *bytes, size_t count) {
	REAL(read);
	return fails_at(file, "") ? -1 : real(file, bytes, count);
}

int rename(const char *from, const char *to) {
	REAL(rename);
	return is_under(to) && fails("rename") ? -1 : real(from, to);
}

int open64(const char *path, int flags, ...) {
	REAL(open64);
	va_list rest;
	va_start(rest, flags);
	int mode = flags & (O_CREAT | O_TMPFILE) ? va_arg(rest, int) : 0;
	va_end(rest);
	if (is_under(path) && fails(flags & O_CREAT ? "open" : "")) return -1;
	return real(path, flags, mode);
}

DIR *opendir(const char *path) {
	REAL(opendir);
	return is_under(path) && fails("") ? NULL : real(path);
}

int statx(int folder, const char *path, int flags, unsigned int mask, struct statx *about) {
	REAL(statx);
	return is_under(path) && fails("") ? -1 : real(folder, path, flags, mask, about);
}

int mkdir(const char *path, mode_t mode) {
	REAL(mkdir);
	return is_under(path) && fails("change") ? -1 : real(path, mode);
}

int unlink(const char *path) {
	REAL(unlink);
	return is_under(path) && fails("change") ? -1 : real(path);
}

int linkat(int from_folder, const char *from, int to_folder, const char *to, int flags) {
	REAL(linkat);
	return is_under(to) && fails("change") ? -1 : real(from_folder, from, to_folder, to, flags);
}

int flock(int file, int operation) {
	REAL(flock);
	return fails_at(file, "") ? -1 : real(file, operation);
}
