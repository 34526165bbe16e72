/* Closed-loop load on a Modbus TCP server on this machine.
 *
 *   load PORT SERVER_PID HELD ACTIVE SECONDS
 *
 * Opens ACTIVE connections, then HELD ones that stay idle, waits until the server holds them all, and then for SECONDS
 * each active connection asks for ten holding registers (function 3), checks the reply, and asks again.
 * Prints: requests per second, then the median and the 99th percentile of a request's time in microseconds. */
#include <arpa/inet.h>
#include <dirent.h>
#include <errno.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/epoll.h>
#include <sys/resource.h>
#include <sys/socket.h>
#include <time.h>
#include <unistd.h>

#define REGISTERS 10
#define REPLY (9 + 2 * REGISTERS)
#define BUCKETS 100000 /* of 1 us */

struct line {
    int fd, got;
    uint16_t transaction;
    uint8_t reply[REPLY];
    double asked;
};

static unsigned histogram[BUCKETS + 1];

static double now(void)
{
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return t.tv_sec + t.tv_nsec * 1e-9;
}

static void fail(const char *what)
{
    fprintf(stderr, "load: %s (%s)\n", what, errno ? strerror(errno) : "no system error");
    exit(1);
}

static int open_line(int port)
{
    struct sockaddr_in to = { .sin_family = AF_INET, .sin_port = htons(port), .sin_addr.s_addr = htonl(INADDR_LOOPBACK) };
    int on = 1, fd = socket(AF_INET, SOCK_STREAM, 0);
    if (fd < 0 || connect(fd, (struct sockaddr *)&to, sizeof to) < 0)
        fail("connect");
    setsockopt(fd, IPPROTO_TCP, TCP_NODELAY, &on, sizeof on);
    return fd;
}

static int descriptors_of(int pid)
{
    char path[64];
    snprintf(path, sizeof path, "/proc/%d/fd", pid);
    DIR *d = opendir(path);
    if (!d)
        fail("the server is gone");
    int n = 0;
    while (readdir(d))
        n++;
    closedir(d);
    return n - 2;
}

static void ask(struct line *l)
{
    uint8_t q[12] = { 0, 0, 0, 0, 0, 6, 1, 3, 0, 0, 0, REGISTERS };
    l->transaction++;
    q[0] = l->transaction >> 8;
    q[1] = l->transaction & 255;
    l->got = 0;
    l->asked = now();
    if (send(l->fd, q, sizeof q, MSG_NOSIGNAL) != sizeof q)
        fail("send");
}

static int answered(struct line *l)
{
    ssize_t n = recv(l->fd, l->reply + l->got, REPLY - l->got, MSG_DONTWAIT);
    if (n <= 0)
        fail("the server closed an active connection");
    l->got += n;
    if (l->got < REPLY)
        return 0;
    if (l->reply[0] != l->transaction >> 8 || l->reply[1] != (l->transaction & 255) || l->reply[7] != 3 || l->reply[8] != 2 * REGISTERS)
        fail("a wrong reply");
    for (int i = 0; i < REGISTERS; i++)
        if ((l->reply[9 + 2 * i] << 8 | l->reply[10 + 2 * i]) != i)
            fail("wrong registers");
    int us = (int)((now() - l->asked) * 1e6);
    histogram[us < BUCKETS ? us : BUCKETS]++;
    return 1;
}

static int percentile(unsigned long total, double share)
{
    unsigned long want = (unsigned long)(total * share), sum = 0;
    for (int i = 0; i <= BUCKETS; i++)
        if ((sum += histogram[i]) > want)
            return i;
    return BUCKETS;
}

int main(int argc, char **argv)
{
    if (argc != 6)
        return 2;
    int port = atoi(argv[1]), pid = atoi(argv[2]), held = atoi(argv[3]), active = atoi(argv[4]);
    double seconds = atof(argv[5]);
    if (held > 4000 || active < 1 || active > 1000 || seconds > 60)
        return 2;
    struct rlimit many;
    getrlimit(RLIMIT_NOFILE, &many);
    many.rlim_cur = many.rlim_max;
    setrlimit(RLIMIT_NOFILE, &many);

    int before = descriptors_of(pid);
    static struct line lines[1000];
    static int idle[4000];
    for (int i = 0; i < active; i++)
        lines[i].fd = open_line(port);
    for (int i = 0; i < held; i++)
        idle[i] = open_line(port);
    double patience = now() + 10;
    while (descriptors_of(pid) < before + active + held) {
        if (now() > patience)
            fail("the server does not hold all connections");
        usleep(10000);
    }

    int e = epoll_create1(0);
    for (int i = 0; i < active; i++) {
        struct epoll_event one = { .events = EPOLLIN, .data.ptr = &lines[i] };
        epoll_ctl(e, EPOLL_CTL_ADD, lines[i].fd, &one);
        ask(&lines[i]);
    }

    /* The first half second warms up and is not counted. */
    struct epoll_event ready[128];
    unsigned long count = 0;
    double start = now(), counted = start + 0.5, end = counted + seconds;
    int warm = 1;
    for (;;) {
        int n = epoll_wait(e, ready, 128, 1000);
        if (n == 0)
            fail("no reply for a second");
        for (int i = 0; i < n; i++) {
            struct line *l = ready[i].data.ptr;
            if (answered(l)) {
                count++;
                ask(l);
            }
        }
        double t = now();
        if (warm && t >= counted) {
            warm = 0;
            count = 0;
            memset(histogram, 0, sizeof histogram);
            counted = t;
            end = t + seconds;
        }
        if (t >= end) {
            end = t;
            break;
        }
    }

    for (int i = 0; i < held; i++) {
        uint8_t b;
        if (recv(idle[i], &b, 1, MSG_DONTWAIT) >= 0 || errno != EAGAIN)
            fail("a held connection was closed");
    }
    printf("%.0f %d %d\n", count / (end - counted), percentile(count, 0.5), percentile(count, 0.99));
    return 0;
}
