/// Work done by several threads, its results taken in the order of submission.
#pragma once

#include <condition_variable>
#include <deque>
#include <functional>
#include <future>
#include <mutex>
#include <thread>
#include <utility>
#include <vector>

namespace output {

/// A bounded queue with its threads. At most `window` results are under way or waiting, which
/// bounds the memory; one thread submits and takes. What a task throws comes out where its result
/// is taken.
template <class Result>
class OrderedPool {
 public:
  using Task = std::function<Result()>;
  using Sink = std::function<void(Result)>;

  OrderedPool(unsigned threads, std::size_t window, Sink sink)
      : window_(window), sink_(std::move(sink)) {
    for (unsigned i = 0; i < threads; ++i) {
      threads_.emplace_back([this](const std::stop_token& stop) { work(stop); });
    }
  }
  ~OrderedPool() {
    for (std::jthread& thread : threads_) thread.request_stop();
  }
  OrderedPool(const OrderedPool&) = delete;
  OrderedPool& operator=(const OrderedPool&) = delete;
  OrderedPool(OrderedPool&&) = delete;
  OrderedPool& operator=(OrderedPool&&) = delete;

  /// Queues a task; hands on every result that is next in order and ready, and waits for one when
  /// the window is full.
  void submit(Task task) {
    make_room();
    std::packaged_task<Result()> packaged(std::move(task));
    pending_.push_back(packaged.get_future());
    {
      const std::lock_guard guard(mutex_);
      queue_.push_back(std::move(packaged));
    }
    filled_.notify_one();
  }

  /// Queues a result that is there already.
  void put(Result result) {
    make_room();
    std::promise<Result> made;
    made.set_value(std::move(result));
    pending_.push_back(made.get_future());
  }

  /// Waits for all that is left.
  void drain() {
    while (!pending_.empty()) take();
  }

 private:
  void make_room() {
    while (pending_.size() >= window_ || (!pending_.empty() && is_ready(pending_.front()))) take();
  }

  static bool is_ready(const std::future<Result>& result) {
    return result.wait_for(std::chrono::seconds(0)) == std::future_status::ready;
  }

  void take() {
    std::future<Result> first = std::move(pending_.front());
    pending_.pop_front();
    sink_(first.get());
  }

  void work(const std::stop_token& stop) {
    for (;;) {
      std::packaged_task<Result()> task;
      {
        std::unique_lock guard(mutex_);
        if (!filled_.wait(guard, stop, [this] { return !queue_.empty(); })) return;
        task = std::move(queue_.front());
        queue_.pop_front();
      }
      task();
    }
  }

  std::size_t window_;
  Sink sink_;
  std::deque<std::future<Result>> pending_;
  std::mutex mutex_;
  std::condition_variable_any filled_;
  std::deque<std::packaged_task<Result()>> queue_;
  std::vector<std::jthread> threads_;  // last: joined before the queue goes
};

}  // namespace output
