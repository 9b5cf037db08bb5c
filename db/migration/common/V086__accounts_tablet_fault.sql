-- Whether the tablet says that its page could not show everything.
alter table seat_code add column faulty boolean default false not null;
