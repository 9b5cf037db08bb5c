-- Up to which version of the deductions a technical controller has seen them: by authorising the called elements,
-- or by saying so later. Evidence: written once.
create table deductions_seen (
  id uuid primary key,
  performance_id uuid not null references performance (id),
  sequence int not null,
  controller varchar(120) not null,
  controller_id varchar(120) not null,
  received_at timestamp(3) with time zone not null,
  constraint deductions_seen_once unique (performance_id, sequence)
);
