package main

import "sync"

// worker does jobs one after the other, in the order in which they were given.
// Giving never waits. The zero worker has nothing to do.
type worker struct {
	mu   sync.Mutex
	jobs []func()
	busy bool
}

// give adds a job.
func (w *worker) give(job func()) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.jobs = append(w.jobs, job)
	if !w.busy {
		w.busy = true
		go w.work()
	}
}

func (w *worker) work() {
	for job := w.next(); job != nil; job = w.next() {
		job()
	}
}

// next is the job that is next; nil ends the work.
func (w *worker) next() func() {
	w.mu.Lock()
	defer w.mu.Unlock()
	if len(w.jobs) == 0 {
		w.busy = false
		return nil
	}
	job := w.jobs[0]
	w.jobs = w.jobs[1:]
	return job
}

// drop forgets the jobs that were not begun.
func (w *worker) drop() {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.jobs = nil
}

// giveLast adds a job in place of those that were not begun: of these only the last is
// wanted.
func (w *worker) giveLast(job func()) {
	w.drop()
	w.give(job)
}

// wait returns when all jobs given so far are done, and this one.
func (w *worker) wait(job func()) {
	done := make(chan struct{})
	w.give(func() {
		defer close(done)
		job()
	})
	<-done
}
