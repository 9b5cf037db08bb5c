-- That a seat has seen a remark of the referee, when the service heard of it. Evidence: written once.
create table remark_seen (
  id uuid primary key,
  performance_id uuid not null references performance (id),
  remark_id uuid not null references remark (id),
  seat_id uuid not null references seat (id),
  seen_at timestamp(3) with time zone not null,
  constraint remark_seen_once unique (remark_id, seat_id)
);

-- The version of the list of called elements that the grades of a card were given to; 0 where nobody knows.
alter table points_card add column list_sequence int default 0 not null;
