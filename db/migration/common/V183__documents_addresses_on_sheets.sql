-- The address of this house that stands on sheets of a version, as it was when that was published.
create table paper_address (
  scope_id uuid not null,
  number int not null,
  address varchar(300) not null,
  constraint paper_address_pk primary key (scope_id, number)
);
