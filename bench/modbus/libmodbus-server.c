/* A register server on libmodbus's own functions, in the manner of the library's "many connections" example:
 * one thread waits for all connections, receives with modbus_receive and answers with modbus_reply.
 *
 *   libmodbus-server PORT select|poll|epoll
 *
 * select is the example's own way. It can't watch descriptors from 1024 up, so poll and epoll stand beside it.
 * modbus_receive itself selects on the one descriptor it reads, so whatever waits outside, connections with
 * a descriptor from 1024 up can only be held, never served: the load generator opens its active ones first. */
#include <arpa/inet.h>
#include <errno.h>
#include <modbus.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <poll.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/epoll.h>
#include <sys/resource.h>
#include <sys/select.h>
#include <sys/socket.h>
#include <unistd.h>

static modbus_t *ctx;
static modbus_mapping_t *map;
static int listener;

static int take(void)
{
    int s = accept(listener, NULL, NULL);
    if (s >= 0) {
        int on = 1;
        setsockopt(s, IPPROTO_TCP, TCP_NODELAY, &on, sizeof on);
    }
    return s;
}

/* 0 when the connection is to be closed. */
static int serve(int s)
{
    uint8_t query[MODBUS_TCP_MAX_ADU_LENGTH];
    modbus_set_socket(ctx, s);
    int n = modbus_receive(ctx, query);
    if (n > 0)
        return modbus_reply(ctx, query, n, map) >= 0;
    return n == 0;
}

static void with_select(void)
{
    fd_set all;
    int top = listener;
    FD_ZERO(&all);
    FD_SET(listener, &all);
    for (;;) {
        fd_set ready = all;
        if (select(top + 1, &ready, NULL, NULL, NULL) < 0)
            exit(1);
        for (int s = 0; s <= top; s++) {
            if (!FD_ISSET(s, &ready))
                continue;
            if (s == listener) {
                int new = take();
                if (new >= FD_SETSIZE) {
                    fprintf(stderr, "select can't watch descriptor %d\n", new);
                    exit(1);
                }
                if (new >= 0) {
                    FD_SET(new, &all);
                    if (new > top)
                        top = new;
                }
            } else if (!serve(s)) {
                close(s);
                FD_CLR(s, &all);
                if (s == top)
                    top--;
            }
        }
    }
}

static void with_poll(void)
{
    static struct pollfd all[4096];
    int count = 1;
    all[0].fd = listener;
    all[0].events = POLLIN;
    for (;;) {
        if (poll(all, count, -1) < 0)
            exit(1);
        for (int i = count - 1; i > 0; i--) {
            if (all[i].revents && !serve(all[i].fd)) {
                close(all[i].fd);
                all[i] = all[--count];
            }
        }
        if (all[0].revents && count < 4096) {
            int new = take();
            if (new >= 0) {
                all[count].fd = new;
                all[count].events = POLLIN;
                all[count++].revents = 0;
            }
        }
    }
}

static void with_epoll(void)
{
    struct epoll_event ready[128], one = { .events = EPOLLIN };
    int e = epoll_create1(0);
    one.data.fd = listener;
    epoll_ctl(e, EPOLL_CTL_ADD, listener, &one);
    for (;;) {
        int n = epoll_wait(e, ready, 128, -1);
        for (int i = 0; i < n; i++) {
            int s = ready[i].data.fd;
            if (s == listener) {
                one.data.fd = take();
                if (one.data.fd >= 0)
                    epoll_ctl(e, EPOLL_CTL_ADD, one.data.fd, &one);
            } else if (!serve(s)) {
                close(s);
            }
        }
    }
}

int main(int argc, char **argv)
{
    if (argc != 3)
        return 2;
    struct rlimit many;
    getrlimit(RLIMIT_NOFILE, &many);
    many.rlim_cur = many.rlim_max;
    setrlimit(RLIMIT_NOFILE, &many);
    signal(SIGPIPE, SIG_IGN);
    ctx = modbus_new_tcp("127.0.0.1", atoi(argv[1]));
    map = modbus_mapping_new(0, 0, 1000, 1000);
    if (!ctx || !map)
        return 1;
    for (int i = 0; i < 1000; i++)
        map->tab_registers[i] = i;
    listener = modbus_tcp_listen(ctx, 512);
    if (listener < 0) {
        fprintf(stderr, "listen: %s\n", modbus_strerror(errno));
        return 1;
    }
    printf("listening\n");
    fflush(stdout);
    if (!strcmp(argv[2], "select"))
        with_select();
    else if (!strcmp(argv[2], "poll"))
        with_poll();
    else if (!strcmp(argv[2], "epoll"))
        with_epoll();
    return 2;
}
