/* A disk that fails, for tests: loaded into a program before the C library, it lets one kind of
 * call fail or hang as long as a file is there.
 *
 * FAILING_CALL   open, write, fsync or rename
 * FAILING_UNDER  only files below this folder
 * FAILING_WHILE  only while this file is there: with "hang" in it calls wait, else they fail
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

static int is_under(const char *path) {
	const char *under = getenv("FAILING_UNDER");
	return under && path && !strncmp(path, under, strlen(under));
}

static int fails(const char *call) {
	const char *failing = getenv("FAILING_CALL"), *flag = getenv("FAILING_WHILE");
	struct stat about;
	if (!failing || !flag || strcmp(failing, call) || stat(flag, &about)) return 0;
	if (about.st_size > 0) {
		/* Between two looks, not instead of one. */
		struct timespec moment = {0, 5000000};
		while (!stat(flag, &about)) nanosleep(&moment, NULL);
		return 0;
	}
	errno = ENOSPC;
	return 1;
}

static int names(int file, char *path, size_t room) {
	char link[64];
	snprintf(link, sizeof link, "/proc/self/fd/%d", file);
	ssize_t length = readlink(link, path, room - 1);
	if (length < 0) return 0;
	path[length] = 0;
	return 1;
}

int fsync(int file) {
	char path[4096];
	int (*real)(int) = dlsym(RTLD_NEXT, "fsync");
	if (names(file, path, sizeof path) && is_under(path) && fails("fsync")) return -1;
	return real(file);
}

ssize_t write(int file, const void *bytes, size_t count) {
	char path[4096];
	ssize_t (*real)(int, const void *, size_t) = dlsym(RTLD_NEXT, "write");
	int before = errno;
	if (names(file, path, sizeof path) && is_under(path) && fails("write")) return -1;
	errno = before;
	return real(file, bytes, count);
}

int rename(const char *from, const char *to) {
	int (*real)(const char *, const char *) = dlsym(RTLD_NEXT, "rename");
	if (is_under(to) && fails("rename")) return -1;
	return real(from, to);
}

int open64(const char *path, int flags, ...) {
	int (*real)(const char *, int, ...) = dlsym(RTLD_NEXT, "open64");
	va_list rest;
	va_start(rest, flags);
	int mode = flags & (O_CREAT | O_TMPFILE) ? va_arg(rest, int) : 0;
	va_end(rest);
	if (flags & O_CREAT && is_under(path) && fails("open")) return -1;
	return real(path, flags, mode);
}
